// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.benchlore.page.Block;
import org.benchlore.page.Span;

/** Lays out a table by tab stops; cells that do not fit go on in further lines of the text. */
final class TableWriter {

    /** Words measured one by one may be a little wider than measured together. */
    private static final int SLACK = 4;

    private final Ruler ruler;
    private final TextBuffer out;

    TableWriter(Ruler ruler, TextBuffer out) {
        this.ruler = ruler;
        this.out = out;
    }

    void write(Block.Table table) {
        var header = table.header().stream().map(title -> List.of(Span.of(title))).toList();
        int[] widths = widths(table, header);
        var tabs = tabs(widths);
        if (table.header().stream().anyMatch(title -> !title.isBlank())) {
            row(header, widths, tabs, Style.HEAD);
        }
        table.rows().forEach(row -> row(row, widths, tabs, Style.BODY));
    }

    private void row(List<List<Span>> cells, int[] widths, List<Integer> tabs, Style plain) {
        var broken = new ArrayList<List<List<Span>>>();
        for (int i = 0; i < cells.size(); i++) {
            broken.add(Cell.broken(cells.get(i), widths[i], ruler, plain));
        }
        int height = broken.stream().mapToInt(List::size).max().orElse(0);
        var fill = plain == Style.HEAD ? Fill.TABLE_HEAD : Fill.NONE;
        for (int y = 0; y < height; y++) {
            int above = y > 0 ? 0 : plain == Style.HEAD ? ruler.room() : ruler.room() / 2;
            out.line(new PageText.Line(fill, 0, 0, above, y == height - 1, tabs));
            for (int x = 0; x < broken.size(); x++) {
                if (x > 0) {
                    out.tab();
                }
                out.spans(y < broken.get(x).size() ? broken.get(x).get(y) : List.of(), plain);
            }
        }
    }

    /** Every column gets the room of its longest word, then a share of what is left by what it would like to have. */
    private int[] widths(Block.Table table, List<List<Span>> header) {
        int columns = header.size();
        int[] least = new int[columns];
        int[] liked = new int[columns];
        widen(header, Style.HEAD, least, liked);
        table.rows().forEach(row -> widen(row, Style.BODY, least, liked));
        int room = ruler.pageWidth() - gap() * (columns - 1);
        if (Arrays.stream(liked).sum() <= room) {
            return liked;
        }
        return share(least, liked, room);
    }

    private void widen(List<List<Span>> cells, Style style, int[] least, int[] liked) {
        for (int i = 0; i < Math.min(cells.size(), least.length); i++) {
            int[] wide = Cell.widths(cells.get(i), ruler, style);
            least[i] = Math.max(least[i], wide[0] + SLACK);
            liked[i] = Math.max(liked[i], wide[1] + SLACK);
        }
    }

    private static int[] share(int[] least, int[] liked, int room) {
        int must = Arrays.stream(least).sum();
        if (must >= room) {
            return Arrays.stream(least).map(width -> Math.max(1, width * room / must)).toArray();
        }
        int wish = Arrays.stream(liked).sum() - must;
        int[] widths = new int[least.length];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = least[i] + (int) ((long) (liked[i] - least[i]) * (room - must) / wish);
        }
        return widths;
    }

    private List<Integer> tabs(int[] widths) {
        var tabs = new ArrayList<Integer>();
        int at = 0;
        for (int i = 0; i < widths.length - 1; i++) {
            at += widths[i] + gap();
            tabs.add(at);
        }
        return List.copyOf(tabs);
    }

    private int gap() {
        return 3 * ruler.room();
    }
}
