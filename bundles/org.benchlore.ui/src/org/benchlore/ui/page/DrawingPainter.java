// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import org.benchlore.page.drawing.Drawing;
import org.benchlore.page.drawing.Shape;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;

/** Paints a drawing in black on white, whatever the theme, as it comes out on paper. */
final class DrawingPainter {

    private static final int[] DASHES = {4, 3};

    private final GC gc;
    private final int left;
    private final int top;
    private final double scale;

    DrawingPainter(GC gc, int left, int top, double scale) {
        this.gc = gc;
        this.left = left;
        this.top = top;
        this.scale = scale;
    }

    void paint(Drawing drawing) {
        var font = gc.getFont();
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        gc.setBackground(gc.getDevice().getSystemColor(SWT.COLOR_WHITE));
        gc.setForeground(gc.getDevice().getSystemColor(SWT.COLOR_BLACK));
        gc.fillRectangle(left, top, (int) Math.ceil(drawing.width() * scale), (int) Math.ceil(drawing.height() * scale));
        drawing.shapes().forEach(this::paint);
        gc.setFont(font);
        gc.setLineWidth(1);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    private void paint(Shape shape) {
        if (shape instanceof Shape.Ring ring) {
            ring(ring);
        } else if (shape instanceof Shape.Dash dash) {
            pen(1, true);
            gc.drawLine(x(dash.fromX()), y(dash.fromY()), x(dash.toX()), y(dash.toY()));
        } else if (shape instanceof Shape.Line line) {
            pen(line.line(), false);
            gc.drawLine(x(line.fromX()), y(line.fromY()), x(line.toX()), y(line.toY()));
        } else if (shape instanceof Shape.Box box) {
            box(box);
        } else if (shape instanceof Shape.Label label) {
            label(label);
        }
    }

    private void ring(Shape.Ring ring) {
        int size = length(2 * ring.radius());
        int from = x(ring.x() - ring.radius());
        int above = y(ring.y() - ring.radius());
        pen(ring.line(), false);
        gc.fillOval(from, above, size, size);
        gc.drawOval(from, above, size, size);
    }

    private void box(Shape.Box box) {
        pen(box.line(), box.isDashed());
        gc.fillRectangle(x(box.x()), y(box.y()), length(box.width()), length(box.height()));
        gc.drawRectangle(x(box.x()), y(box.y()), length(box.width()), length(box.height()));
    }

    private void pen(double width, boolean isDashed) {
        gc.setLineWidth(Math.max(1, length(width)));
        gc.setLineStyle(SWT.LINE_SOLID);
        if (isDashed) {
            gc.setLineDash(DASHES);
        }
    }

    private void label(Shape.Label label) {
        var data = gc.getFont().getFontData()[0];
        data.setStyle(label.strong() ? SWT.BOLD : SWT.NORMAL);
        // Height of type in pixels, as in SVG; SWT counts points of a 96th of an inch at 72 to it.
        data.setHeight(Math.max(1, (int) Math.round(label.size() * scale * 72 / gc.getDevice().getDPI().y)));
        var font = new Font(gc.getDevice(), data);
        gc.setFont(font);
        var extent = gc.textExtent(label.text(), SWT.DRAW_TRANSPARENT);
        int from = label.middle() ? x(label.x()) - extent.x / 2 : x(label.x());
        gc.drawText(label.text(), from, y(label.y()) - extent.y / 2, SWT.DRAW_TRANSPARENT);
        gc.setFont(null);
        font.dispose();
    }

    private int x(double value) {
        return left + length(value);
    }

    private int y(double value) {
        return top + length(value);
    }

    private int length(double value) {
        return (int) Math.round(value * scale);
    }
}
