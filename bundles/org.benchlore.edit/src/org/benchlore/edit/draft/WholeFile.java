// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file whole or not at all: a temporary file beside it, flushed to the disk, renamed over it. Only for files
 * that are no elements of a library; those are saved through the library.
 */
public final class WholeFile {

    private WholeFile() {
    }

    /**
     * Writes a file.
     *
     * @param file the file; its folder is made if it is missing
     * @param bytes its new content
     * @throws IOException if it cannot be written; then the old content is still there
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        var folder = Files.createDirectories(file.toAbsolutePath().getParent());
        var temporary = folder.resolve("." + UUID.randomUUID() + ".part");
        try {
            try (var channel = FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                var buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }
}
