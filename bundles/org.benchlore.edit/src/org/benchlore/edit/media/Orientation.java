// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.util.OptionalInt;

/** Reads and writes the one Exif tag that belongs to the picture: which side is up. Exif 2.3, 4.6.4; from memory. */
final class Orientation {

    private static final int TAG = 0x0112;
    private static final int LAST = 8;
    private static final int HEAD = 4;
    private static final int TIFF = HEAD + 6;
    private static final int ENTRY = 12;
    private static final int MOST_ENTRIES = 1000;

    private Orientation() {
    }

    /** The orientation in the segment at the reader's place; empty if it is no Exif, or says none, or is damaged. */
    static OptionalInt in(Bytes bytes, int length) throws MediaException {
        if (length < TIFF + 8 || !bytes.text(HEAD, 6).equals("Exif\0\0")) {
            return OptionalInt.empty();
        }
        boolean isLittle = bytes.text(TIFF, 2).equals("II");
        int directory = TIFF + number(bytes, TIFF + 4, isLittle, 4);
        if (directory < TIFF || directory + 2 > length) {
            return OptionalInt.empty();
        }
        int count = Math.min(MOST_ENTRIES, number(bytes, directory, isLittle, 2));
        for (int i = 0; i < count && directory + 2 + (i + 1) * ENTRY <= length; i++) {
            int entry = directory + 2 + i * ENTRY;
            if (number(bytes, entry, isLittle, 2) == TAG) {
                int value = number(bytes, entry + 8, isLittle, 2);
                return value >= 1 && value <= LAST ? OptionalInt.of(value) : OptionalInt.empty();
            }
        }
        return OptionalInt.empty();
    }

    private static int number(Bytes bytes, int at, boolean isLittle, int length) throws MediaException {
        int number = 0;
        for (int i = 0; i < length; i++) {
            number = number << 8 | bytes.peek(isLittle ? at + length - 1 - i : at + i);
        }
        return number;
    }

    /** A JPEG file with nothing but this orientation in its Exif segment. */
    static byte[] put(byte[] jpeg, int orientation) throws MediaException {
        var bytes = new Bytes(jpeg);
        bytes.keep(2);
        bytes.add(new byte[] {(byte) 0xff, (byte) 0xe1, 0, 34, 'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1,
            1, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0, 0, 0, 0, 0});
        bytes.keep(jpeg.length - 2);
        return bytes.kept();
    }
}
