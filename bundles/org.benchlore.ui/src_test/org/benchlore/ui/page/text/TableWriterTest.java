// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableWriterTest {

    private static final String LONG = "a rather long remark on how the bolt is tightened in two stages and marked";

    private static PageText write(int width, String... cells) {
        var row = List.of(cells).stream().map(cell -> List.of(Span.of(cell))).toList();
        var table = new Block.Table("", List.of("Place", "Torque", "Remark"), List.of(row));
        return new PageWriter(new FixedRuler(width)).write(new Page("Title", List.of(table)));
    }

    @Test
    void tableThatFitsHasOneLineForEachRow() {
        assertEquals("Place\tTorque\tRemark\nCover\t22 N·m\tdry\n", write(600, "Cover", "22 N·m", "dry").text());
    }

    @ParameterizedTest
    @ValueSource(ints = {300, 420, 700})
    void noLineIsWiderThanThePage(int width) {
        var page = write(width, "Cover of the take-off", "22 N·m", LONG);
        var lines = page.text().split("\n");
        for (int i = 0; i < lines.length; i++) {
            assertTrue(end(lines[i], page.lines().get(i).tabs()) <= width, lines[i]);
        }
    }

    private static int end(String line, List<Integer> tabs) {
        var cells = line.split("\t", -1);
        int start = cells.length == 1 ? 0 : tabs.get(cells.length - 2);
        return start + cells[cells.length - 1].length() * FixedRuler.CHARACTER;
    }

    @Test
    void noCellReachesIntoTheNextColumn() {
        var page = write(420, "Cover of the take-off", "22 N·m", LONG);
        var lines = page.text().split("\n");
        for (int i = 0; i < lines.length; i++) {
            var cells = lines[i].split("\t", -1);
            int left = 0;
            for (int x = 0; x < cells.length - 1; x++) {
                assertTrue(left + cells[x].length() * FixedRuler.CHARACTER < page.lines().get(i).tabs().get(x), lines[i]);
                left = page.lines().get(i).tabs().get(x);
            }
        }
    }

    @Test
    void noWordIsLostWhereCellsAreBroken() {
        var text = write(300, "Cover", "22 N·m", LONG).text();
        for (var word : LONG.split(" ")) {
            assertTrue(text.contains(word), word);
        }
    }

    @Test
    void linkInABrokenCellLeadsOnFromEveryLine() {
        var target = new Address("parts/bolt.xmi", "bolt");
        List<Span> cell = List.of(new Span.Link(LONG, target));
        var table = new Block.Table("", List.of("Part"), List.of(List.of(cell)));
        var page = new PageWriter(new FixedRuler(200)).write(new Page("Title", List.of(table)));
        assertTrue(page.links().size() > 2);
        assertTrue(page.links().stream().allMatch(link -> link.target().equals(target)));
    }
}
