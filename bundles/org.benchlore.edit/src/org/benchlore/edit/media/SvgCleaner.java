// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.util.Base64;
import java.util.regex.Pattern;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a drawing anew with nothing in it but what draws: no scripts, no event handlers, no foreign content, nothing
 * that is fetched. The JDK's own reader is used, with document types and external entities off.
 */
final class SvgCleaner {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String LINK = "http://www.w3.org/1999/xlink";
    private static final int DEEPEST = 200;
    private static final int MOST_ELEMENTS = 50_000;
    private static final Pattern PICTURE = Pattern.compile("data:image/(?:png|jpeg|gif);base64,([A-Za-z0-9+/=\\s]+)");

    private final XMLStreamReader in;
    private final XMLStreamWriter out;
    private final SvgWeight weight = new SvgWeight();
    private int depth;
    private int elements;

    private SvgCleaner(XMLStreamReader in, XMLStreamWriter out) {
        this.in = in;
        this.out = out;
    }

    /** The reader is given characters: of bytes that are none it would tell on the error stream, past any listener. */
    private static XMLStreamReader reader(byte[] bytes) throws XMLStreamException {
        var factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("Refused to open " + systemId);
        });
        return factory.createXMLStreamReader(new StringReader(SvgText.of(bytes)));
    }

    /** Tells whether the outermost element is that of a drawing. */
    static boolean isSvg(byte[] bytes) {
        try {
            var reader = reader(bytes);
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamConstants.START_ELEMENT) {
                    return reader.getLocalName().equals("svg") && SVG.equals(reader.getNamespaceURI());
                }
            }
            return false;
        } catch (XMLStreamException | RuntimeException e) {
            return false;
        }
    }

    static byte[] clean(byte[] bytes) throws MediaException {
        var clean = new ByteArrayOutputStream();
        try {
            var out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(clean, "UTF-8");
            var cleaner = new SvgCleaner(reader(bytes), out);
            cleaner.document();
            out.flush();
            if (!cleaner.weight.isBounded()) {
                throw new MediaException("The drawing uses parts of itself too often: simplify it and add it again");
            }
        } catch (XMLStreamException | RuntimeException e) {
            throw new MediaException("The drawing cannot be read: save it as plain SVG and add it again", e);
        }
        return clean.toByteArray();
    }

    private void document() throws XMLStreamException, MediaException {
        while (in.hasNext()) {
            switch (in.next()) {
                case XMLStreamConstants.START_ELEMENT -> start();
                case XMLStreamConstants.END_ELEMENT -> end();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text(in.getText());
                case XMLStreamConstants.ENTITY_REFERENCE -> throw new XMLStreamException("An unknown entity");
                default -> { }
            }
        }
    }

    private void start() throws XMLStreamException, MediaException {
        var name = in.getLocalName();
        if (++elements > MOST_ELEMENTS || depth >= DEEPEST) {
            throw new MediaException("The drawing has too many parts: simplify it and add it again");
        }
        if (!SVG.equals(in.getNamespaceURI()) || !SvgAllowed.isElement(name)) {
            skip();
        } else if (name.equals("style")) {
            style();
        } else {
            depth++;
            weight.start(in.getAttributeValue(null, "id"));
            out.writeStartElement(name);
            if (depth == 1) {
                out.writeDefaultNamespace(SVG);
            }
            attributes(name);
        }
    }

    private void skip() throws XMLStreamException, MediaException {
        for (int inner = 1; inner > 0;) {
            switch (in.next()) {
                case XMLStreamConstants.START_ELEMENT -> inner++;
                case XMLStreamConstants.END_ELEMENT -> inner--;
                default -> { }
            }
        }
    }

    private void style() throws XMLStreamException, MediaException {
        var sheet = new StringBuilder();
        while (in.next() != XMLStreamConstants.END_ELEMENT) {
            if (in.isStartElement()) {
                skip();
            } else if (in.isCharacters()) {
                sheet.append(in.getText());
            }
        }
        if (SvgAllowed.isSheet(sheet.toString())) {
            out.writeStartElement("style");
            out.writeCharacters(sheet.toString());
            out.writeEndElement();
        }
    }

    private void attributes(String element) throws XMLStreamException {
        boolean isLinked = false;
        for (int i = 0; i < in.getAttributeCount(); i++) {
            var space = in.getAttributeNamespace(i);
            var name = in.getAttributeLocalName(i);
            var value = in.getAttributeValue(i);
            boolean isPlain = space == null || space.isEmpty();
            if (name.equals("href") && (isPlain || LINK.equals(space))) {
                isLinked = isLinked || link(element, value.strip());
            } else if (isPlain && SvgAllowed.isAttribute(name, value)) {
                out.writeAttribute(name, value);
                SvgAllowed.ownUrls(value).forEach(weight::uses);
            }
        }
    }

    private boolean link(String element, String value) throws XMLStreamException {
        if (SvgAllowed.isOwnLink(value) && !element.equals("image")) {
            out.writeAttribute("href", value);
            weight.uses(value.substring(1));
            return true;
        }
        var picture = element.equals("image") ? picture(value) : "";
        if (!picture.isEmpty()) {
            out.writeAttribute("href", picture);
        }
        return !picture.isEmpty();
    }

    /** A picture within the drawing is told by its content and cleaned like any other; else it is left out. */
    private static String picture(String value) {
        var matcher = PICTURE.matcher(value);
        if (!matcher.matches()) {
            return "";
        }
        try {
            var bytes = Base64.getMimeDecoder().decode(matcher.group(1));
            var type = MediaType.of(bytes).orElse(MediaType.PDF);
            return switch (type) {
                case PNG -> "data:image/png;base64," + Base64.getEncoder().encodeToString(PictureCleaner.png(bytes));
                case GIF -> "data:image/gif;base64," + Base64.getEncoder().encodeToString(PictureCleaner.gif(bytes));
                case JPEG -> "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(MediaShelf.clean(bytes));
                default -> "";
            };
        } catch (MediaException | IllegalArgumentException e) {
            System.getLogger(SvgCleaner.class.getName())
                    .log(System.Logger.Level.DEBUG, "A picture within a drawing was left out", e);
            return "";
        }
    }

    private void text(String text) throws XMLStreamException {
        if (depth > 0) {
            out.writeCharacters(text);
        }
    }

    private void end() throws XMLStreamException {
        out.writeEndElement();
        weight.end();
        depth--;
    }
}
