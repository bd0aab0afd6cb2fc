// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

import javax.xml.stream.XMLStreamException;

/** Turns the bytes of an XML file into characters: UTF-16 by its mark, Latin 1 where it says so, else UTF-8. */
final class SvgText {

    private static final int DECLARATION = 200;
    private static final char MARK = '\ufeff';
    private static final Pattern LATIN = Pattern.compile("(?i)^<\\?xml[^>]*encoding\\s*=\\s*['\"](?:iso-8859-1|latin1)['\"]");

    private SvgText() {
    }

    static String of(byte[] bytes) throws XMLStreamException {
        try {
            var text = charset(bytes).newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new XMLStreamException("The bytes are no text", e);
        }
    }

    private static Charset charset(byte[] bytes) {
        if (bytes.length > 1 && (bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff
                || bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe)) {
            return StandardCharsets.UTF_16;
        }
        var start = new String(bytes, 0, Math.min(DECLARATION, bytes.length), StandardCharsets.ISO_8859_1);
        return LATIN.matcher(start).find() ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    }
}
