// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

import java.util.ArrayList;
import java.util.List;

/** Rows of words in aligned columns: the first column to the left, the others to the right. */
public final class Table {

    private static final String GAP = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    /**
     * Begins a table.
     *
     * @param head names of the columns
     */
    public Table(String... head) {
        rows.add(List.of(head));
    }

    /**
     * Adds a row.
     *
     * @param cells as many as there are columns
     */
    public void add(String... cells) {
        if (cells.length != rows.get(0).size()) {
            throw new IllegalArgumentException(cells.length + " cells do not fit " + rows.get(0).size() + " columns");
        }
        rows.add(List.of(cells));
    }

    @Override
    public String toString() {
        var text = new StringBuilder();
        for (var row : rows) {
            var line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                line.append(column == 0 ? "" : GAP).append(padded(row.get(column), column));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private String padded(String cell, int column) {
        int width = rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
        var blanks = " ".repeat(width - cell.length());
        return column == 0 ? cell + blanks : blanks + cell;
    }
}
