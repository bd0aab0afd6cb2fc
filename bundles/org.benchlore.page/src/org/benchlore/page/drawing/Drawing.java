// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import java.util.List;

/**
 * A drawing in black on white.
 *
 * @param width width in units of the drawing
 * @param height height in the same units
 * @param title what it shows, in a few words
 * @param description what it shows, in words for those who do not see it
 * @param shapes its marks, the lowest first
 */
public record Drawing(double width, double height, String title, String description, List<Shape> shapes) {

    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /**
     * The drawing as one SVG 1.1 document that stands alone: no script, nothing fetched, no style that a theme or a
     * printer could lose. The same drawing gives the same text on every machine.
     */
    public String svg() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + new SvgWriter().write(this, "xmlns=\"http://www.w3.org/2000/svg\" ");
    }

    /** The drawing as one element to stand within a page of HTML, where it needs no namespace. */
    public String svgElement() {
        return new SvgWriter().write(this, "");
    }
}
