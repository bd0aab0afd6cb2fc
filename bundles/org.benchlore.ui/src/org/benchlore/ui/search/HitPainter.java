// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.benchlore.search.Hit;
import org.benchlore.search.Passage;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/**
 * Paints a hit in two lines: title with kind, status and year at the right; passage with machine at the right. In a
 * narrow list kind, status and year stand before the passage.
 */
final class HitPainter {

    private static final int EDGE = 6;
    private static final int ICON = 16;
    private static final int LINE_GAP = 2;
    private static final int PADDING = 4;
    private static final int NARROW = 440;
    private static final double MOST_FOR_FACTS = 0.42;

    private final Table table;
    private final Function<Hit, Optional<Passage>> passages;
    private final Palette palette;
    private final Icons icons;
    private final MarkedLine line;

    /** Begins to paint the rows of a table whose items carry a {@link HitLine} or, as a heading, nothing. */
    HitPainter(Table table, Palette palette, Function<Hit, Optional<Passage>> passages) {
        this.table = table;
        this.passages = passages;
        this.palette = palette;
        this.icons = new Icons(table);
        this.line = new MarkedLine(table, palette);
        table.addListener(SWT.MeasureItem, this::measure);
        table.addListener(SWT.EraseItem, event -> event.detail &= ~SWT.FOREGROUND);
        table.addListener(SWT.PaintItem, this::paint);
    }

    private void measure(Event event) {
        int text = event.gc.getFontMetrics().getHeight();
        event.height = event.item.getData() instanceof HitLine ? 2 * text + LINE_GAP + 2 * PADDING : text + 2 * PADDING;
        event.width = table.getClientArea().width;
    }

    private void paint(Event event) {
        var bounds = ((TableItem) event.item).getBounds(0);
        bounds.width = table.getClientArea().width - 2 * EDGE - bounds.x;
        bounds.x += EDGE;
        bounds.y += PADDING;
        var selected = (event.detail & SWT.SELECTED) != 0;
        if (event.item.getData() instanceof HitLine hit) {
            event.gc.drawImage(icons.of(hit.hit().row().kind()), bounds.x, bounds.y + 1);
            bounds.x += ICON + EDGE;
            bounds.width -= ICON + EDGE;
            paint(event.gc, hit, bounds, selected);
        } else {
            heading(event.gc, ((TableItem) event.item).getText(), bounds);
        }
    }

    private void heading(GC gc, String words, Rectangle room) {
        gc.setForeground(palette.color("LABEL"));
        gc.drawText(words, room.x, room.y, true);
        int from = room.x + gc.textExtent(words).x + EDGE;
        int middle = room.y + gc.getFontMetrics().getHeight() / 2;
        gc.setForeground(palette.color("RULE"));
        gc.drawLine(from, middle, room.x + room.width, middle);
    }

    private void paint(GC gc, HitLine hit, Rectangle room, boolean selected) {
        var passage = passages.apply(hit.hit()).orElse(new Passage("", List.of(), List.of(), List.of()));
        boolean narrow = room.width < NARROW;
        int second = room.y + gc.getFontMetrics().getHeight() + LINE_GAP;
        var words = gc.getForeground();
        if (!selected) {
            gc.setForeground(palette.color("LABEL"));
        }
        int facts = narrow ? 0 : right(gc, hit.facts(), room, room.y);
        passage(gc, hit, passage, new Rectangle(room.x, second, room.width, room.height), selected);
        gc.setForeground(words);
        line.draw(gc, new MarkedLine.Words(hit.hit().row().title(), passage.titleMarks()), room.x, room.y,
                room.width - facts, selected);
    }

    private void passage(GC gc, HitLine hit, Passage passage, Rectangle room, boolean selected) {
        boolean narrow = room.width < NARROW;
        int machine = narrow ? 0 : right(gc, hit.machines(), room, room.y);
        int indent = narrow ? left(gc, hit.facts(), room, room.y) : 0;
        line.draw(gc, new MarkedLine.Words(passage.text(), passage.marks()), room.x + indent, room.y,
                room.width - machine - indent, selected);
    }

    /** Draws at the right end and returns the width that is taken. */
    private int right(GC gc, String words, Rectangle room, int y) {
        if (words.isEmpty()) {
            return 0;
        }
        int width = Math.min(gc.textExtent(words).x, (int) (room.width * MOST_FOR_FACTS));
        line.draw(gc, new MarkedLine.Words(words, List.of()), room.x + room.width - width, y, width + 1, true);
        return width + 3 * EDGE;
    }

    private int left(GC gc, String words, Rectangle room, int y) {
        line.draw(gc, new MarkedLine.Words(words, List.of()), room.x, y, room.width, true);
        return gc.textExtent(words).x + 2 * EDGE;
    }
}
