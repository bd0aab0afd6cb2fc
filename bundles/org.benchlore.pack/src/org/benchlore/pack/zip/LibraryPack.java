// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.TreeMap;

import org.benchlore.pack.PackException;
import org.benchlore.pack.PackedLibrary;
import org.benchlore.store.Hash;

/** Makes a library pack of a packed library. */
public final class LibraryPack {

    private LibraryPack() {
    }

    /**
     * Makes the list of contents.
     *
     * @param packed what goes in
     * @param shop the shop that makes it
     * @param day the day it is made
     * @return the list
     * @throws IOException if the packed library cannot be read
     */
    public static Manifest manifest(PackedLibrary packed, String shop, LocalDate day) throws IOException {
        var files = new TreeMap<String, Manifest.Entry>();
        for (var path : packed.paths()) {
            var bytes = packed.bytes(path);
            files.put(path, new Manifest.Entry(Hash.of(bytes), bytes.length));
        }
        return new Manifest(packed.selection().title(), shop, day, packed.isInvented(), packed.selection().request().extras(),
                files, packed.leftOut());
    }

    /**
     * Writes the pack whole or not at all. A file that is there already stays.
     *
     * @param packed what goes in
     * @param manifest its list of contents
     * @param file a new zip file
     * @throws PackException if the file is there already or cannot be written
     */
    public static void write(PackedLibrary packed, Manifest manifest, Path file) throws PackException {
        if (Files.exists(file)) {
            throw new PackException("'" + file + "' is there already and is not written over: name a new file.");
        }
        var absolute = file.toAbsolutePath();
        var part = absolute.resolveSibling("." + absolute.getFileName() + ".part");
        try {
            Files.createDirectories(absolute.getParent());
            try (var out = new BufferedOutputStream(Files.newOutputStream(part))) {
                PackWriter.write(packed, manifest, out);
            }
            Files.move(part, absolute, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new PackException("'" + file + "' cannot be written: check the place and its free space.", e);
        } finally {
            part.toFile().delete();
        }
    }
}
