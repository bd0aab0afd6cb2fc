// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The one right to write a library, held by one process at a time. The lock goes with the process, however it ends.
 */
public final class LibraryLock implements AutoCloseable {

    private final FileChannel channel;
    private final FileLock lock;

    private LibraryLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Tries to take the lock of a library.
     *
     * @param root the library's folder
     * @return the lock, or empty if another holder has it
     * @throws IOException if the library cannot be written at all
     */
    public static Optional<LibraryLock> tryTake(Path root) throws IOException {
        var folder = Files.createDirectories(root.resolve(LibraryFiles.OWN_FOLDER));
        var channel = FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = null;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            System.getLogger(LibraryLock.class.getName())
                    .log(System.Logger.Level.DEBUG, "The lock is held in this process already", e);
        } finally {
            if (lock == null) {
                channel.close();
            }
        }
        return lock == null ? Optional.empty() : Optional.of(new LibraryLock(channel, lock));
    }

    @Override
    public void close() throws IOException {
        lock.release();
        channel.close();
    }
}
