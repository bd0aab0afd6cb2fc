// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * What a file is, told by its first bytes and never by its name. Sources: PNG (W3C) 5.2, JPEG (ITU-T T.81) B.1.1.3,
 * GIF89a 17, WebP container (RFC 9649) 2.4, PDF (ISO 32000-1) 7.5.2, SVG 1.1 (W3C) 4.2; from memory.
 */
public enum MediaType {
    /** Portable network graphics. */
    PNG("png"),
    /** Photographs. */
    JPEG("jpg"),
    /** WebP pictures. */
    WEBP("webp"),
    /** GIF pictures. */
    GIF("gif"),
    /** Drawings. */
    SVG("svg"),
    /** Documents. */
    PDF("pdf");

    private static final byte[] PNG_MARK = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte[] JPEG_MARK = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};

    private final String ending;

    MediaType(String ending) {
        this.ending = ending;
    }

    /**
     * Returns the ending of the file names of this type.
     *
     * @return letters without a point
     */
    public String ending() {
        return ending;
    }

    /**
     * Tells what bytes are.
     *
     * @param bytes the content of a file
     * @return the type, or empty if it is none of these
     */
    public static Optional<MediaType> of(byte[] bytes) {
        if (startsWith(bytes, 0, PNG_MARK)) {
            return Optional.of(PNG);
        }
        if (startsWith(bytes, 0, JPEG_MARK)) {
            return Optional.of(JPEG);
        }
        if (startsWith(bytes, 0, "RIFF") && startsWith(bytes, 8, "WEBP")) {
            return Optional.of(WEBP);
        }
        if (startsWith(bytes, 0, "GIF87a") || startsWith(bytes, 0, "GIF89a")) {
            return Optional.of(GIF);
        }
        if (startsWith(bytes, 0, "%PDF-")) {
            return Optional.of(PDF);
        }
        return SvgCleaner.isSvg(bytes) ? Optional.of(SVG) : Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int at, String mark) {
        return startsWith(bytes, at, mark.getBytes(StandardCharsets.US_ASCII));
    }

    private static boolean startsWith(byte[] bytes, int at, byte[] mark) {
        return bytes.length >= at + mark.length
                && Arrays.equals(bytes, at, at + mark.length, mark, 0, mark.length);
    }
}
