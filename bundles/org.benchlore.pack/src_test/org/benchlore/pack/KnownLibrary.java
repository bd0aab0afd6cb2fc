// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;

/** Copies of the demonstration library with its catalogue, which is made once, so that each test opens a known library. */
final class KnownLibrary {

    private static Path known;

    private KnownLibrary() {
    }

    /** Copies the library and its catalogue into two folders; the library may be changed, the catalogue follows. */
    static void copy(Path library, Path cache) {
        try {
            var from = known();
            copyAll(from.resolve("library"), library);
            copyAll(from.resolve("cache"), cache);
        } catch (IOException | LibraryException e) {
            throw new IllegalStateException(e);
        }
    }

    private static synchronized Path known() throws IOException, LibraryException {
        if (known == null) {
            var folder = Files.createTempDirectory("benchlore-known");
            copyAll(Path.of(System.getProperty("benchlore.root"), "procedures"), folder.resolve("library"));
            Library.open(folder.resolve("library"), folder.resolve("cache"), new NullProgressMonitor()).close();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            known = folder;
        }
        return known;
    }

    private static void copyAll(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (var file : files.filter(it -> !it.startsWith(from.resolve(".benchlore"))).toList()) {
                var target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }

    private static void delete(Path folder) {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
