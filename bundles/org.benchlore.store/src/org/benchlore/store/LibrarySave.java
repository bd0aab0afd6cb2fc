// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;

/** Saves one element: lock, compare with the base, write whole, read back. */
final class LibrarySave {

    private final Path root;
    private final BookFormat format;
    private final Catalogue catalogue;
    private final boolean holdsLock;

    LibrarySave(Path root, BookFormat format, Catalogue catalogue, boolean holdsLock) {
        this.root = root;
        this.format = format;
        this.catalogue = catalogue;
        this.holdsLock = holdsLock;
    }

    LoadedFile save(TopElement element, Optional<String> base) throws LibraryException {
        var path = path(element);
        refuseLoss(path);
        var bytes = format.write(path, element);
        var readBack = format.read(path, bytes);
        if (!readBack.isWhole()) {
            throw new LibraryException(path + " was not saved: " + readBack.problems().get(0).reason());
        }
        try (var lock = lock(path)) {
            refuseConflict(path, base);
            AtomicFile.write(root.resolve(path), bytes);
        } catch (IOException e) {
            throw new LibraryException(path + " was not saved: the library cannot be written; check its permissions"
                    + " and the free space", e);
        }
        return readBack;
    }

    private AutoCloseableLock lock(String path) throws IOException, LibraryException {
        if (holdsLock) {
            return () -> { };
        }
        return LibraryLock.tryTake(root).orElseThrow(() -> new LibraryException(path
                + " was not saved: another Benchlore is writing this library; close it or try again"))::close;
    }

    private interface AutoCloseableLock extends AutoCloseable {
        @Override
        void close() throws IOException;
    }

    private static String path(TopElement element) throws LibraryException {
        try {
            return Kind.of(element.eClass()).orElseThrow().path(element.getId());
        } catch (IllegalArgumentException e) {
            throw new LibraryException("The element was not saved: " + e.getMessage(), e);
        }
    }

    private void refuseLoss(String path) throws LibraryException {
        var problem = catalogue.entry(path).flatMap(entry -> entry.problems().stream()
                .filter(p -> p.severity() != FileProblem.Severity.MISFIT).findFirst());
        if (problem.isPresent()) {
            throw new LibraryException(path + " is read-only, since saving would drop what could not be read: "
                    + problem.get() + "; mend the file first");
        }
    }

    private void refuseConflict(String path, Optional<String> base) throws IOException, LibraryException {
        var file = root.resolve(path);
        var now = Files.exists(file) ? Optional.of(Hash.of(Files.readAllBytes(file))) : Optional.<String>empty();
        if (!now.equals(base)) {
            throw new LibraryException(path + " was not saved: it was changed on the disk meanwhile; load it again");
        }
    }
}
