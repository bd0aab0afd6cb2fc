// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Optional;

import org.benchlore.model.TopElement;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Hash;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;

/**
 * A working copy as it was when somebody asked to save it, on its way to the disk. {@link #run} may be called on any
 * thread and does not touch the session, which takes the outcome with {@link EditSession#endSave}.
 */
public final class PendingSave implements Runnable {

    private final Library library;
    private final Disk disk;
    private final String path;
    private final Optional<LoadedFile> base;
    private final byte[] bytes;
    private final long version;
    private volatile SaveResult result;
    private volatile LibraryException failure;

    PendingSave(Library library, Disk disk, String path, Optional<LoadedFile> base, byte[] bytes, long version) {
        this.library = library;
        this.disk = disk;
        this.path = path;
        this.base = base;
        this.bytes = bytes;
        this.version = version;
    }

    /** Looks at the disk and writes the file; keeps what came of it. */
    @Override
    public void run() {
        try {
            result = write();
        } catch (LibraryException e) {
            failure = e;
        }
    }

    private SaveResult write() throws LibraryException {
        var now = disk.now();
        var hash = now.map(LoadedFile::hash);
        disk.takeInIfOlder(hash);
        var element = element();
        if (hash.equals(base.map(LoadedFile::hash)) || hash.equals(Optional.of(Hash.of(bytes)))) {
            return new SaveResult.Saved(library.save(element, hash));
        }
        return new SaveResult.Stopped(disk.conflict(base, element, now));
    }

    private TopElement element() throws LibraryException {
        var copy = new BookFormat().read(path, bytes);
        if (!copy.isWhole()) {
            throw new LibraryException(path + " was not saved: " + copy.problems().get(0).reason());
        }
        return copy.root().orElseThrow();
    }

    long version() {
        return version;
    }

    /** What came of it; a conflict or what was written. */
    SaveResult outcome() throws LibraryException {
        if (failure != null) {
            throw failure;
        }
        return result;
    }
}
