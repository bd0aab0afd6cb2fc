// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Reads the bytes of a file from front to back and collects those that stay. */
final class Bytes {

    private final byte[] bytes;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private int at;

    Bytes(byte[] bytes) {
        this.bytes = bytes;
    }

    int position() {
        return at;
    }

    boolean hasMore() {
        return at < bytes.length;
    }

    /** The unsigned byte at a distance from here. */
    int peek(int distance) throws MediaException {
        if (distance < 0 || at + distance >= bytes.length) {
            throw cutOff();
        }
        return bytes[at + distance] & 0xff;
    }

    /** Two bytes at a distance, the high one first. */
    int big16(int distance) throws MediaException {
        return peek(distance) << 8 | peek(distance + 1);
    }

    /** Four bytes at a distance, the high one first; refused where no file can be so long. */
    int big32(int distance) throws MediaException {
        return length((long) big16(distance) << 16 | big16(distance + 2));
    }

    /** Four bytes at a distance, the low one first; refused where no file can be so long. */
    int little32(int distance) throws MediaException {
        return length((long) peek(distance + 3) << 24 | (long) peek(distance + 2) << 16 | peek(distance + 1) << 8
                | peek(distance));
    }

    private int length(long length) throws MediaException {
        if (length > bytes.length) {
            throw cutOff();
        }
        return (int) length;
    }

    String text(int distance, int length) throws MediaException {
        if (at + distance + length > bytes.length) {
            throw cutOff();
        }
        return new String(bytes, at + distance, length, StandardCharsets.ISO_8859_1);
    }

    void keep(int length) throws MediaException {
        check(length);
        kept.write(bytes, at, length);
        at += length;
    }

    void skip(int length) throws MediaException {
        check(length);
        at += length;
    }

    private void check(int length) throws MediaException {
        if (length < 0 || length > bytes.length - at) {
            throw cutOff();
        }
    }

    void add(byte[] further) {
        kept.writeBytes(further);
    }

    byte[] kept() {
        return kept.toByteArray();
    }

    static MediaException cutOff() {
        return new MediaException("The picture is cut off or damaged: copy it again from where it comes");
    }
}
