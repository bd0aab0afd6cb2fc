// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;

import org.benchlore.store.Hash;

/**
 * The content of one draft: a few lines of text, then the file it was made from and the working copy, both in the
 * library's own form. A sum over everything shows whether it is whole.
 *
 * @param path path of the element's file below the library
 * @param title what people call the element
 * @param when when it was written
 * @param base bytes of the file it was made from, empty for a new element
 * @param mine bytes of the working copy
 */
record DraftFile(String path, String title, Instant when, Optional<byte[]> base, byte[] mine) {

    private static final String MARK = "Benchlore draft 1";
    private static final String NEW = "new";
    private static final int LINES = 6;

    byte[] bytes() {
        var body = new ByteArrayOutputStream();
        base.ifPresent(body::writeBytes);
        body.writeBytes(mine);
        var head = String.join("\n", MARK, path, title.replaceAll("\\s+", " "), when.toString(),
                base.map(bytes -> Integer.toString(bytes.length)).orElse(NEW)) + "\n";
        var all = new ByteArrayOutputStream();
        all.writeBytes(head.getBytes(StandardCharsets.UTF_8));
        all.writeBytes((sum(head, body.toByteArray()) + "\n").getBytes(StandardCharsets.UTF_8));
        all.writeBytes(body.toByteArray());
        return all.toByteArray();
    }

    private static String sum(String head, byte[] body) {
        return Hash.of((head + Hash.of(body)).getBytes(StandardCharsets.UTF_8));
    }

    /** Reads a draft; empty if it is not whole. */
    static Optional<DraftFile> read(byte[] bytes) {
        var lines = new String[LINES];
        int at = 0;
        for (int i = 0; i < LINES; i++) {
            int end = at;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            if (end == bytes.length) {
                return Optional.empty();
            }
            lines[i] = new String(bytes, at, end - at, StandardCharsets.UTF_8);
            at = end + 1;
        }
        return read(lines, Arrays.copyOfRange(bytes, at, bytes.length));
    }

    private static Optional<DraftFile> read(String[] lines, byte[] body) {
        var head = String.join("\n", Arrays.copyOf(lines, LINES - 1)) + "\n";
        if (!lines[0].equals(MARK) || !lines[LINES - 1].equals(sum(head, body))) {
            return Optional.empty();
        }
        try {
            int length = lines[4].equals(NEW) ? 0 : Integer.parseInt(lines[4]);
            var base = lines[4].equals(NEW) ? Optional.<byte[]>empty() : Optional.of(Arrays.copyOf(body, length));
            return Optional.of(new DraftFile(lines[1], lines[2], Instant.parse(lines[3]), base,
                    Arrays.copyOfRange(body, length, body.length)));
        } catch (DateTimeException | IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }
}
