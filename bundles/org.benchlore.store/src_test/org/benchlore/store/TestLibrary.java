// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.NullProgressMonitor;

/** Writes small libraries for tests. */
final class TestLibrary {

    private final Path root;
    private final Path cache;

    TestLibrary(Path folder) throws IOException {
        this.root = Files.createDirectories(folder.resolve("library"));
        this.cache = folder.resolve("cache");
        put("shop.xmi", "<book:Shop %s id=\"shop\" formatVersion=\"1\" title=\"Test shop\"/>");
    }

    Path root() {
        return root;
    }

    /** Writes a file; {@code %s} stands for the namespaces. */
    TestLibrary put(String path, String xml) throws IOException {
        var file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + xml.replace("%s", "xmi:version=\"2.0\""
                + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
                + " xmlns:book=\"urn:benchlore:book:1\"") + "\n");
        return this;
    }

    TestLibrary put(String path, byte[] bytes) throws IOException {
        Files.createDirectories(root.resolve(path).getParent());
        Files.write(root.resolve(path), bytes);
        return this;
    }

    /** Writes a note with a body and further attributes. */
    TestLibrary note(String id, String attributes, String body) throws IOException {
        return put("notes/2026/" + id + ".xmi", "<book:FieldNote %s id=\"" + id + "\" formatVersion=\"1\" title=\"A note\" "
                + attributes + "><text>text</text>" + body + "</book:FieldNote>");
    }

    Library open() throws LibraryException {
        return Library.open(root, cache, new NullProgressMonitor());
    }

    Path cache() {
        return cache;
    }

    /** The demonstration library of this checkout. */
    static Path demonstration() {
        return Path.of(System.getProperty("benchlore.root"), "procedures");
    }
}
