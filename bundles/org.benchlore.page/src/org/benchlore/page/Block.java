// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.Signal;
import org.benchlore.page.drawing.Drawing;

/** One piece of a page, from top to bottom. */
public sealed interface Block {

    /**
     * A heading.
     *
     * @param level 1 for the page's title, 2 and 3 below it
     * @param text the words
     */
    record Heading(int level, String text) implements Block {
    }

    /**
     * A paragraph; line breaks within its words are kept.
     *
     * @param spans its words
     */
    record Paragraph(List<Span> spans) implements Block {
    }

    /** What a banner warns of. */
    enum Tone {
        /** Invented data, not for use on a real machine. */
        INVENTED,
        /** Withdrawn or superseded: do not follow. */
        STOP,
        /** A draft, a read-only file, something to know before reading on. */
        ATTENTION,
        /** A standing caution, such as 'check against the manufacturer's data'. */
        CAUTION
    }

    /**
     * A line across the page that cannot be overlooked.
     *
     * @param tone what it warns of
     * @param text the words
     */
    record Banner(Tone tone, String text) implements Block {
    }

    /**
     * A hazard panel; stands before what it warns of.
     *
     * @param signal signal word
     * @param kind kind of hazard
     * @param consequence what can happen
     * @param avoidance how to avoid it
     */
    record HazardPanel(Signal signal, String kind, String consequence, String avoidance) implements Block {
    }

    /**
     * Labels with values.
     *
     * @param pairs in order
     */
    record Pairs(List<Pair> pairs) implements Block {
    }

    /**
     * A label with its value.
     *
     * @param label what it is
     * @param value the value
     */
    record Pair(String label, List<Span> value) {
    }

    /**
     * A table.
     *
     * @param caption what it shows
     * @param header column titles
     * @param rows cells, each row as long as the header
     */
    record Table(String caption, List<String> header, List<List<List<Span>>> rows) implements Block {
    }

    /**
     * A list without numbers.
     *
     * @param items its items
     */
    record Bullets(List<List<Span>> items) implements Block {
    }

    /**
     * A numbered step; its hazards stand before it as panels of their own.
     *
     * @param number such as {@code 12}
     * @param label such as {@code Measure}, empty for plain doing
     * @param text what to do
     * @param signOff whether a person signs it
     */
    record Numbered(String number, String label, List<Span> text, boolean signOff) implements Block {
    }

    /**
     * A picture of the library's media.
     *
     * @param file path below the folder media
     * @param caption what is seen
     */
    record Picture(String file, String caption) implements Block {
    }

    /**
     * A drawing made by the program.
     *
     * @param drawing black on white
     */
    record Drawn(Drawing drawing) implements Block {
    }
}
