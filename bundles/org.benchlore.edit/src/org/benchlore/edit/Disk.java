// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Merge;
import org.benchlore.model.compare.Words;
import org.benchlore.store.BookFormat;
import org.benchlore.store.FileProblem;
import org.benchlore.store.FileProblem.Severity;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.eclipse.core.runtime.NullProgressMonitor;

/** Looks at the file of a session as it lies on the disk now. */
final class Disk {

    private final Library library;
    private final String path;
    private final BookFormat format = new BookFormat();

    Disk(Library library, String path) {
        this.library = library;
        this.path = path;
    }

    /** The file as it is now, or empty if there is none. */
    Optional<LoadedFile> now() throws LibraryException {
        try {
            return Optional.of(format.read(path, Files.readAllBytes(library.root().resolve(path))));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new LibraryException(path + " cannot be read: check its permissions and that its disk is there", e);
        }
    }

    /** The library takes in what is on the disk if what it knows of the file is older than what was found. */
    void takeInIfOlder(Optional<String> hash) throws LibraryException {
        if (library.catalogue().entry(path).map(entry -> entry.hash()).equals(hash)) {
            return;
        }
        try {
            library.refresh(new NullProgressMonitor());
        } catch (IOException e) {
            throw new LibraryException("The library at " + library.root()
                    + " cannot be read any more: check that its disk is there", e);
        }
    }

    byte[] bytes(TopElement element) {
        return format.write(path, element);
    }

    Conflict conflict(Optional<LoadedFile> base, TopElement mine, Optional<LoadedFile> now) {
        if (now.isEmpty()) {
            return new Conflict.Deleted(path);
        }
        var theirs = now.get();
        if (!theirs.isWhole()) {
            return new Conflict.Unreadable(path, theirs.problems());
        }
        try {
            var words = new Words(address -> library.catalogue().at(address)
                    .filter(row -> row.address().equals(address)).map(row -> row.title()));
            return new Conflict.Changed(theirs, new Merge(base.flatMap(LoadedFile::root), Copies.of(mine),
                    theirs.root().orElseThrow(), words));
        } catch (IllegalArgumentException e) {
            return new Conflict.Unreadable(path, List.of(new FileProblem(path, 0,
                    "the file holds another element now", Severity.READ_ONLY)));
        }
    }
}
