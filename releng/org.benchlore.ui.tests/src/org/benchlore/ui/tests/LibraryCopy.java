// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;

import org.benchlore.store.LibraryException;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.workshop.Use;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.ui.PlatformUI;

/**
 * A copy of the demonstration library for one test, opened in the window. Catalogue and index are made once and copied along,
 * so that each test opens a library that the program knows.
 */
final class LibraryCopy implements AutoCloseable {

    /** The note of the lead story. */
    static final String NOTE = "notes/2025/note-2025-learning-fails-on-a-fresh-install-k7m3.xmi";

    private static Path known;

    private final WindowDriver window;
    private final Path folder;

    private LibraryCopy(WindowDriver window, Path folder) {
        this.window = window;
        this.folder = folder;
    }

    static LibrarySession session() {
        return PlatformUI.getWorkbench().getService(LibrarySession.class);
    }

    static LibraryCopy open(WindowDriver window) throws IOException, LibraryException {
        var folder = Files.createTempDirectory("benchlore-window").toRealPath();
        var places = session().workshop().places();
        copy(known(), folder);
        copy(places.cacheOf(known()), places.cacheOf(folder));
        session().open(folder);
        window.waitUntil("the copy is open", () -> session().current()
                .filter(opened -> opened.library().library().root().equals(folder)).isPresent());
        return new LibraryCopy(window, folder);
    }

    private static Path known() throws IOException, LibraryException {
        if (known == null) {
            var folder = Files.createTempDirectory("benchlore-known").toRealPath();
            copy(session().workshop().demonstration(), folder);
            session().workshop().open(folder, Use.LOOK_UP, new NullProgressMonitor()).close();
            known = folder;
        }
        return known;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target, StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    Path file(String path) {
        return folder.resolve(path);
    }

    @Override
    public void close() throws IOException {
        window.closeDialogs();
        session().close();
        window.waitUntil("the library is closed", () -> session().current().isEmpty());
        window.workFor(300);
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
