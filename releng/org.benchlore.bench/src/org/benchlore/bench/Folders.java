// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;

/** Scratch folders: made, weighed and removed. */
public final class Folders implements AutoCloseable {

    private final Path root;

    /**
     * Makes a scratch folder, removed with all that is in it when this is closed.
     *
     * @throws IOException if it cannot be made
     */
    public Folders() throws IOException {
        root = Files.createTempDirectory("benchlore-bench-");
    }

    /**
     * Returns a folder below the scratch folder.
     *
     * @param name its name
     * @return the folder; it exists
     * @throws IOException if it cannot be made
     */
    public Path of(String name) throws IOException {
        return Files.createDirectories(root.resolve(name));
    }

    /**
     * Adds up the files of a folder.
     *
     * @param folder a folder
     * @return bytes
     * @throws IOException if it cannot be listed
     */
    public static long size(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
        }
    }

    /**
     * Removes a folder and all that is in it.
     *
     * @param folder a folder
     * @throws IOException if something cannot be removed
     */
    public static void remove(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Override
    public void close() throws IOException {
        remove(root);
    }
}
