// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.util.Set;

/**
 * Takes texts, places and times out of PNG, WebP and GIF files, and whatever follows their end. PNG (W3C) 11.3, WebP
 * (RFC 9649) 2.7, GIF89a 24 to 26; from memory.
 */
final class PictureCleaner {

    private static final Set<String> PNG_KEPT = Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB",
            "iCCP", "sBIT", "bKGD", "hIST", "pHYs", "sPLT", "acTL", "fcTL", "fdAT");
    private static final Set<String> WEBP_KEPT = Set.of("VP8 ", "VP8L", "VP8X", "ALPH", "ANIM", "ANMF", "ICCP");
    private static final int PNG_MARK = 8;
    private static final int PNG_AROUND = 12;
    private static final int RIFF_HEAD = 12;
    private static final int EXIF_AND_XMP = 0x0c;

    private PictureCleaner() {
    }

    static byte[] png(byte[] file) throws MediaException {
        var bytes = new Bytes(file);
        bytes.keep(PNG_MARK);
        String type;
        do {
            int length = bytes.big32(0);
            type = bytes.text(4, 4);
            if (PNG_KEPT.contains(type)) {
                bytes.keep(length + PNG_AROUND);
            } else {
                bytes.skip(length + PNG_AROUND);
            }
        } while (!type.equals("IEND"));
        return bytes.kept();
    }

    static byte[] webp(byte[] file) throws MediaException {
        var bytes = new Bytes(file);
        int end = bytes.little32(4) + 8;
        if (end > file.length) {
            throw Bytes.cutOff();
        }
        bytes.keep(RIFF_HEAD);
        while (bytes.position() < end) {
            int length = bytes.little32(4);
            int whole = 8 + length + length % 2;
            if (WEBP_KEPT.contains(bytes.text(0, 4))) {
                bytes.keep(whole);
            } else {
                bytes.skip(whole);
            }
        }
        return withLength(bytes.kept());
    }

    /** The length in the head is that of what is left, and the flags no longer promise what was taken out. */
    private static byte[] withLength(byte[] file) {
        int length = file.length - 8;
        for (int i = 0; i < 4; i++) {
            file[4 + i] = (byte) (length >> 8 * i);
        }
        int flags = RIFF_HEAD + 8;
        if (file.length > flags && file[RIFF_HEAD] == 'V' && file[RIFF_HEAD + 3] == 'X') {
            file[flags] &= (byte) ~EXIF_AND_XMP;
        }
        return file;
    }

    static byte[] gif(byte[] file) throws MediaException {
        var bytes = new Bytes(file);
        int flags = bytes.peek(10);
        bytes.keep(13 + colours(flags));
        while (bytes.peek(0) != 0x3b) {
            switch (bytes.peek(0)) {
                case 0x2c -> {
                    bytes.keep(10 + colours(bytes.peek(9)) + 1);
                    blocks(bytes, true);
                }
                case 0x21 -> extension(bytes);
                default -> throw Bytes.cutOff();
            }
        }
        bytes.keep(1);
        return bytes.kept();
    }

    private static int colours(int flags) {
        return (flags & 0x80) == 0 ? 0 : 3 << (flags & 7) + 1;
    }

    /** Graphic control stays, as does the extension that repeats an animation; comments and others go. */
    private static void extension(Bytes bytes) throws MediaException {
        int label = bytes.peek(1);
        boolean repeats = label == 0xff && bytes.peek(2) == 11 && bytes.text(3, 11).equals("NETSCAPE2.0");
        boolean stays = label == 0xf9 || repeats;
        if (stays) {
            bytes.keep(2);
        } else {
            bytes.skip(2);
        }
        blocks(bytes, stays);
    }

    private static void blocks(Bytes bytes, boolean stay) throws MediaException {
        int length;
        do {
            length = bytes.peek(0);
            if (stay) {
                bytes.keep(length + 1);
            } else {
                bytes.skip(length + 1);
            }
        } while (length > 0);
    }
}
