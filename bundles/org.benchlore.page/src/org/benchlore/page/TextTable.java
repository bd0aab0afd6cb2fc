// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Sets a table for a terminal: columns as wide as what is in them, the widest narrowed and wrapped until all fit.
 * Where even that does not fit, each row becomes a list of labels and values.
 */
final class TextTable {

    private static final String GAP = "  ";

    private final List<String> header;
    private final List<List<String>> rows;
    private final int width;

    TextTable(List<String> header, List<List<String>> rows, int width) {
        this.header = header;
        this.rows = rows;
        this.width = width;
    }

    List<String> lines() {
        var widths = widths(TextTable::longestLine);
        var narrowest = widths(TextTable::longestWord);
        int gaps = GAP.length() * (widths.length - 1);
        while (Arrays.stream(widths).sum() + gaps > width) {
            int widest = widest(widths, narrowest);
            if (widest < 0) {
                return asLists();
            }
            widths[widest]--;
        }
        return asColumns(widths);
    }

    private int[] widths(ToIntFunction<String> measure) {
        var widths = new int[header.size()];
        for (int column = 0; column < widths.length; column++) {
            widths[column] = measure.applyAsInt(header.get(column));
            for (var row : rows) {
                widths[column] = Math.max(widths[column], measure.applyAsInt(row.get(column)));
            }
        }
        return widths;
    }

    private static int longestLine(String cell) {
        return Wrapping.clean(cell).lines().mapToInt(Wrapping::width).max().orElse(0);
    }

    /** An id that is cut cannot be typed, so no column becomes narrower than its longest word. */
    private static int longestWord(String cell) {
        return Arrays.stream(Wrapping.words(Wrapping.clean(cell).replace('\n', ' '))).mapToInt(Wrapping::width).max()
                .orElse(0);
    }

    /** Returns the widest column that can still give way, or -1. */
    private static int widest(int[] widths, int[] narrowest) {
        int widest = -1;
        for (int column = 0; column < widths.length; column++) {
            boolean gives = widths[column] > narrowest[column];
            widest = gives && (widest < 0 || widths[column] > widths[widest]) ? column : widest;
        }
        return widest;
    }

    private List<String> asColumns(int[] widths) {
        var lines = new ArrayList<String>(row(header, widths));
        lines.add(String.join(GAP, Arrays.stream(widths).mapToObj("-"::repeat).toList()));
        rows.forEach(row -> lines.addAll(row(row, widths)));
        return lines;
    }

    private static List<String> row(List<String> cells, int[] widths) {
        var wrapped = new ArrayList<List<String>>();
        for (int column = 0; column < widths.length; column++) {
            wrapped.add(Wrapping.wrap(cells.get(column), widths[column]));
        }
        int height = Collections.max(wrapped.stream().map(List::size).toList());
        var lines = new ArrayList<String>();
        for (int line = 0; line < height; line++) {
            var text = new ArrayList<String>();
            for (int column = 0; column < widths.length; column++) {
                var cell = wrapped.get(column);
                text.add(Wrapping.pad(line < cell.size() ? cell.get(line) : "", widths[column]));
            }
            lines.add(String.join(GAP, text));
        }
        return lines;
    }

    private List<String> asLists() {
        var lines = new ArrayList<String>();
        for (var row : rows) {
            for (int column = 0; column < header.size(); column++) {
                if (!row.get(column).isBlank()) {
                    lines.addAll(Wrapping.hanging(column == 0 ? "- " : "  ", header.get(column) + ": "
                            + row.get(column), width));
                }
            }
        }
        return lines;
    }
}
