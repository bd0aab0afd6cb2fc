// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import org.benchlore.page.drawing.Shape.Box;
import org.benchlore.page.drawing.Shape.Dash;
import org.benchlore.page.drawing.Shape.Label;
import org.benchlore.page.drawing.Shape.Line;
import org.benchlore.page.drawing.Shape.Ring;
import org.benchlore.torque.Figures;

/** Writes a drawing as SVG; numbers with a decimal point, at most two decimals; everything written is escaped. */
final class SvgWriter {

    private static final double HUNDREDTHS = 100;
    /** Half the height of capitals over the height of type: baseline below the middle, which every viewer understands. */
    private static final double TO_BASELINE = 0.36;

    String write(Drawing drawing, String attributes) {
        var size = "width=\"" + number(drawing.width()) + "\" height=\"" + number(drawing.height()) + "\"";
        var svg = new StringBuilder("<svg " + attributes
                + size + " viewBox=\"0 0 " + number(drawing.width()) + " " + number(drawing.height())
                + "\" role=\"img\">\n<title>" + escape(drawing.title()) + "</title>\n<desc>"
                + escape(drawing.description()) + "</desc>\n<rect " + size + " fill=\"#ffffff\"/>\n");
        drawing.shapes().forEach(shape -> svg.append(element(shape)).append('\n'));
        return svg.append("</svg>\n").toString();
    }

    private static String element(Shape shape) {
        if (shape instanceof Ring ring) {
            return "<circle cx=\"" + number(ring.x()) + "\" cy=\"" + number(ring.y()) + "\" r=\"" + number(ring.radius())
                    + "\" fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"" + number(ring.line()) + "\"/>";
        }
        if (shape instanceof Dash dash) {
            return "<line x1=\"" + number(dash.fromX()) + "\" y1=\"" + number(dash.fromY()) + "\" x2=\"" + number(dash.toX())
                    + "\" y2=\"" + number(dash.toY()) + "\" stroke=\"#000000\" stroke-width=\"1\" stroke-dasharray=\"4 3\"/>";
        }
        if (shape instanceof Line line) {
            return "<line x1=\"" + number(line.fromX()) + "\" y1=\"" + number(line.fromY()) + "\" x2=\"" + number(line.toX())
                    + "\" y2=\"" + number(line.toY()) + "\" stroke=\"#000000\" stroke-width=\"" + number(line.line()) + "\"/>";
        }
        return shape instanceof Box box ? frame(box) : text((Label) shape);
    }

    private static String frame(Box box) {
        return "<rect x=\"" + number(box.x()) + "\" y=\"" + number(box.y()) + "\" width=\"" + number(box.width())
                + "\" height=\"" + number(box.height()) + "\" fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\""
                + number(box.line()) + "\"" + (box.isDashed() ? " stroke-dasharray=\"5 4\"" : "") + "/>";
    }

    private static String text(Label label) {
        return "<text x=\"" + number(label.x()) + "\" y=\"" + number(label.y() + TO_BASELINE * label.size())
                + "\" font-family=\"sans-serif\" font-size=\"" + number(label.size()) + "\""
                + (label.strong() ? " font-weight=\"bold\"" : "") + (label.middle() ? " text-anchor=\"middle\"" : "")
                + " fill=\"#000000\">" + escape(label.text()) + "</text>";
    }

    private static String number(double value) {
        return Figures.plain(Math.round(value * HUNDREDTHS) / HUNDREDTHS);
    }

    /** Escapes text and drops what XML cannot hold. */
    static String escape(String text) {
        return text.replaceAll("[^\\t\\n\\r\\x20-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "")
                .replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
