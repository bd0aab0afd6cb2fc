// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;

import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;

/** Homes in which the demonstration library lies already, with its catalogue and index, which are made once. */
final class KnownHome {

    private static Path known;

    private KnownHome() {
    }

    /** Makes a workshop at home in an empty folder, of which the demonstration library is known. */
    static Workshop in(Path home) {
        try {
            var from = known();
            var to = Places.below(home);
            copyAll(from.resolve("data"), to.data());
            var workshop = new Workshop(to);
            copyAll(Places.below(from).cacheOf(new Workshop(Places.below(from)).demonstration()), to.cacheOf(workshop.demonstration()));
            return workshop;
        } catch (IOException | LibraryException e) {
            throw new IllegalStateException(e);
        }
    }

    private static synchronized Path known() throws IOException, LibraryException {
        if (known == null) {
            var folder = Files.createTempDirectory("benchlore-home");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            var workshop = new Workshop(Places.below(folder));
            workshop.open(workshop.demonstration(), Use.LOOK_UP, new NullProgressMonitor()).close();
            known = folder;
        }
        return known;
    }

    private static void copyAll(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (var file : files.toList()) {
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
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
