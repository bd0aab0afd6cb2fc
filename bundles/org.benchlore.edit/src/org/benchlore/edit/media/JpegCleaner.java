// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

/**
 * Takes out of a JPEG file what is not the picture: place, time, camera, comments, previews and whatever follows the end.
 * The colour profile stays, and so does the orientation. Segments after ITU-T T.81 annex B; orientation after
 * Exif 2.3, 4.6.4; from memory.
 */
final class JpegCleaner {

    private static final int START = 0xd8;
    private static final int END = 0xd9;
    private static final int SCAN = 0xda;
    private static final int APP0 = 0xe0;
    private static final int APP1 = 0xe1;
    private static final int APP2 = 0xe2;
    private static final int APP14 = 0xee;
    private static final int APP15 = 0xef;
    private static final int COMMENT = 0xfe;
    private static final int FIRST_RESTART = 0xd0;
    private static final int LAST_RESTART = 0xd7;
    private static final int HEAD = 4;
    private static final byte[] END_MARK = {(byte) 0xff, (byte) END};

    private final Bytes bytes;
    private int orientation = 1;
    private boolean hasScan;

    private JpegCleaner(byte[] bytes) {
        this.bytes = new Bytes(bytes);
    }

    /**
     * A cleaned picture.
     *
     * @param bytes the file
     * @param orientation 1 to 8 as Exif counts, 1 for upright; it is no longer in the bytes
     */
    record Cleaned(byte[] bytes, int orientation) {
    }

    static Cleaned clean(byte[] bytes) throws MediaException {
        var cleaner = new JpegCleaner(bytes);
        cleaner.clean();
        return new Cleaned(cleaner.bytes.kept(), cleaner.orientation);
    }

    private void clean() throws MediaException {
        bytes.keep(2);
        while (true) {
            if (bytes.peek(0) != 0xff) {
                throw Bytes.cutOff();
            }
            int marker = bytes.peek(1);
            if (marker == 0xff) {
                bytes.skip(1);
            } else if (marker == END) {
                break;
            } else {
                segment(marker);
            }
        }
        if (!hasScan) {
            throw Bytes.cutOff();
        }
        bytes.add(END_MARK);
    }

    private void segment(int marker) throws MediaException {
        if (marker == START || marker < 0xc0) {
            throw Bytes.cutOff();
        }
        int length = bytes.big16(2) + 2;
        if (marker == APP1) {
            orientation = Orientation.in(bytes, length).orElse(orientation);
        }
        if (isPicture(marker, length)) {
            bytes.keep(length);
        } else {
            bytes.skip(length);
        }
        if (marker == SCAN) {
            hasScan = true;
            scan();
        }
    }

    private boolean isPicture(int marker, int length) throws MediaException {
        if (marker == APP0) {
            return startsWith("JFIF\0", length);
        }
        if (marker == APP2) {
            return startsWith("ICC_PROFILE\0", length);
        }
        return marker == APP14 ? startsWith("Adobe", length)
                : marker != COMMENT && (marker < APP0 || marker > APP15);
    }

    private boolean startsWith(String mark, int length) throws MediaException {
        return length >= HEAD + mark.length() && bytes.text(HEAD, mark.length()).equals(mark);
    }

    /** Within a scan, FF stands before 00 or a restart marker; any other marker ends it. */
    private void scan() throws MediaException {
        int length = 0;
        while (bytes.peek(length) != 0xff || isWithinScan(bytes.peek(length + 1))) {
            length++;
        }
        bytes.keep(length);
    }

    private static boolean isWithinScan(int next) {
        return next == 0 || next >= FIRST_RESTART && next <= LAST_RESTART;
    }
}
