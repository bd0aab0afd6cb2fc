// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;

/** A copy of the demonstration library to write in. */
public final class DemoCopy {

    /** A procedure with steps, and other elements that the tests work on. */
    public static final String PROCEDURE = "procedures/renew-pto-actuator.xmi";

    private final Path folder;

    /** Copies the library into a folder. */
    public DemoCopy(Path folder) {
        this.folder = folder;
        KnownLibrary.copy(root(), cache());
    }

    private Path cache() {
        return folder.resolve("cache");
    }

    /** The library's folder. */
    public Path root() {
        return folder.resolve("library");
    }

    /** Opens the library. */
    public Library open() {
        try {
            return Library.open(root(), cache(), new NullProgressMonitor());
        } catch (LibraryException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Sessions over the library, with ids that are the same on every run. */
    public Sessions sessions() {
        return new Sessions(open(), new Random(42));
    }

    /** Replaces text in a file, as another program would. */
    public void outside(String path, String old, String replacement) {
        try {
            var file = root().resolve(path);
            var text = Files.readString(file);
            if (!text.contains(old)) {
                throw new IllegalArgumentException(path + " does not hold " + old);
            }
            Files.writeString(file, text.replace(old, replacement));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a file. */
    public String text(String path) {
        try {
            return Files.readString(root().resolve(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Paths of all files. */
    public List<String> paths() {
        return open().catalogue().entries().stream().map(entry -> entry.path()).toList();
    }
}
