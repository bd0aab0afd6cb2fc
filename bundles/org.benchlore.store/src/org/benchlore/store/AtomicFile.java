// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file whole or not at all: a temporary file in the same folder, flushed to the disk, renamed over the old
 * one, and the folder flushed as well.
 */
public final class AtomicFile {

    private AtomicFile() {
    }

    /**
     * Writes a file. Elements of a library are written by {@link Library#save} only.
     *
     * @param file the file; its folder is made if it is missing, its permissions stay
     * @param bytes its new content
     * @throws IOException if it cannot be written; then the old content is still there
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        var folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        var temporary = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            writeThrough(temporary, bytes);
            keepPermissions(file, temporary);
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            flushFolder(folder);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    private static void writeThrough(Path file, byte[] bytes) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            var buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void keepPermissions(Path old, Path replacement) throws IOException {
        if (Files.exists(old) && FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(replacement, Files.getPosixFilePermissions(old));
        }
    }

    /** A folder can be flushed on some systems only; the rename itself has happened by then. */
    private static void flushFolder(Path folder) {
        try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            System.getLogger(AtomicFile.class.getName())
                    .log(System.Logger.Level.DEBUG, "This system does not flush folders", e);
        }
    }
}
