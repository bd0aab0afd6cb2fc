// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.page.drawing.Drawing;

/**
 * A page laid out for a certain width. Places are characters of the text, measures are pixels.
 *
 * @param text everything, lines parted by a line feed
 * @param runs looks, in order, covering all but line feeds and tabs
 * @param links places that lead somewhere, in order
 * @param lines looks of the lines, one for each
 * @param panels hazard panels
 * @param pictures pictures, in order
 */
public record PageText(String text, List<Run> runs, List<LinkPlace> links, List<Line> lines, List<Panel> panels,
        List<PicturePlace> pictures) {

    /**
     * A run of text of one look.
     *
     * @param start first character
     * @param length number of characters
     * @param style its look
     */
    public record Run(int start, int length, Style style) {
    }

    /**
     * A place that leads somewhere.
     *
     * @param start first character
     * @param length number of characters
     * @param target where it leads
     */
    public record LinkPlace(int start, int length, Address target) {

        /**
         * Tells whether a place is within the link.
         *
         * @param offset a character
         * @return true if it is
         */
        public boolean holds(int offset) {
            return offset >= start && offset < start + length;
        }
    }

    /**
     * A line.
     *
     * @param fill what is behind it
     * @param indent indent of its beginning
     * @param wrapIndent indent of what does not fit and goes on below
     * @param above empty room above it
     * @param ruled whether a thin rule is drawn under it
     * @param tabs tab stops, from the indent of the line
     */
    public record Line(Fill fill, int indent, int wrapIndent, int above, boolean ruled, List<Integer> tabs) {
    }

    /**
     * A hazard panel.
     *
     * @param first its first line, which holds the signal word
     * @param last its last line
     */
    public record Panel(int first, int last) {
    }

    /**
     * A picture or a drawing, which stands for one character.
     *
     * @param offset the character
     * @param file path below the folder media; empty for a drawing
     * @param drawing the drawing; empty for a picture
     */
    public record PicturePlace(int offset, String file, Optional<Drawing> drawing) {
    }

    /**
     * Returns the link at a place.
     *
     * @param offset a character
     * @return the link, or empty
     */
    public Optional<LinkPlace> linkAt(int offset) {
        return links.stream().filter(link -> link.holds(offset)).findFirst();
    }
}
