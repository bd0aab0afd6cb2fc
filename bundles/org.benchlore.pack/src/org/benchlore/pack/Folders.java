// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;

/** Deletes folders that a pack was put together in. */
public final class Folders {

    private Folders() {
    }

    /**
     * Deletes a folder with all in it. Links are deleted, not followed.
     *
     * @param folder a folder that may be missing
     * @throws IOException if something in it cannot be deleted
     */
    public static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
