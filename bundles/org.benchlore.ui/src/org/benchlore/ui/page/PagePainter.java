// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import org.benchlore.ui.page.text.Fill;
import org.benchlore.ui.page.text.PageText;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;

/** Paints what a text widget has no words for: the edges of banners and hazard panels, rules of tables. */
final class PagePainter {

    private static final int PADDING = 4;
    private static final int EDGE = 2;

    private final StyledText text;
    private final PageColours colours;

    PagePainter(StyledText text, PageColours colours) {
        this.text = text;
        this.colours = colours;
    }

    void paint(GC gc, PageText page) {
        int height = text.getClientArea().height;
        int first = Math.max(0, text.getLineIndex(0) - 1);
        int last = Math.min(page.lines().size() - 1, text.getLineIndex(height) + 1);
        for (int i = first; i <= last; i++) {
            edges(gc, page, i);
            rule(gc, page, i);
        }
        for (var panel : page.panels()) {
            if (panel.last() >= first && panel.first() <= last) {
                frame(gc, page, panel);
            }
        }
    }

    private void edges(GC gc, PageText page, int line) {
        var fill = fill(page, line);
        if (fill == Fill.NONE || fill == Fill.TABLE_HEAD) {
            return;
        }
        gc.setBackground(colours.behind(fill));
        margins(gc, top(page, line), bottom(line) - top(page, line));
        if (fill(page, line - 1) != fill && page.lines().get(line).above() > 0) {
            gc.fillRectangle(0, top(page, line) - PADDING, width(), PADDING);
        }
        if (fill(page, line + 1) == Fill.NONE || above(page, line + 1) > 0) {
            gc.fillRectangle(0, bottom(line), width(), PADDING);
        }
    }

    /** The widget fills a line between its margins only. */
    private void margins(GC gc, int y, int height) {
        gc.fillRectangle(0, y, text.getLeftMargin(), height);
        gc.fillRectangle(width() - text.getRightMargin(), y, text.getRightMargin(), height);
    }

    private void rule(GC gc, PageText page, int line) {
        if (page.lines().get(line).ruled()) {
            gc.setForeground(colours.rule());
            int y = bottom(line) + 1;
            gc.drawLine(text.getLeftMargin(), y, width() - text.getRightMargin(), y);
        }
    }

    private void frame(GC gc, PageText page, PageText.Panel panel) {
        gc.setForeground(colours.behind(fill(page, panel.first())));
        gc.setLineWidth(EDGE);
        int y = top(page, panel.first()) - PADDING;
        gc.drawRectangle(EDGE / 2, y + EDGE / 2, width() - EDGE, bottom(panel.last()) + PADDING - y - EDGE);
        gc.setLineWidth(1);
    }

    private static Fill fill(PageText page, int line) {
        return line < 0 || line >= page.lines().size() ? Fill.NONE : page.lines().get(line).fill();
    }

    private static int above(PageText page, int line) {
        return line >= page.lines().size() ? 0 : page.lines().get(line).above();
    }

    private int top(PageText page, int line) {
        return text.getLinePixel(line) + page.lines().get(line).above();
    }

    private int bottom(int line) {
        return text.getLinePixel(line + 1);
    }

    private int width() {
        return text.getClientArea().width;
    }
}
