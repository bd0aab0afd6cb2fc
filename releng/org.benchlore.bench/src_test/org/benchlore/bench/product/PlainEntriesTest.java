// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.product;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plain entries go through the product and come back under their own ids. */
class PlainEntriesTest {

    @TempDir
    Path folder;

    @Test
    void anEntryIsFoundByAWordOfItsText() throws Exception {
        try (var entries = new PlainEntries(folder)) {
            entries.add(List.of(new TextEntry("7", "brake pipe"), new TextEntry("x/y", "shaft\u0007 <seal> & more")));
            assertEquals(List.of(new Ranked("x/y", 100)), entries.search("seal", 100));
            assertEquals(List.of(), entries.search("nowhere", 100));
        }
    }

    @Test
    void anEntryWithoutWordsIsNoHindrance() throws Exception {
        try (var entries = new PlainEntries(folder)) {
            entries.add(List.of(new TextEntry("empty", ""), new TextEntry("pipe", "brake pipe")));
            assertEquals(List.of(new Ranked("pipe", 10)), entries.search("pipe", 10));
        }
    }

    @Test
    void scoresCountDownInTheProductsOrder() throws Exception {
        try (var entries = new PlainEntries(folder)) {
            entries.add(IntStream.range(0, 30).mapToObj(i -> new TextEntry("e" + i, "pipe")).toList());
            assertEquals(IntStream.range(0, 20).mapToObj(i -> 20.0 - i).toList(),
                    entries.search("pipe", 20).stream().map(Ranked::score).toList());
        }
    }

    @Test
    void pathsOfNotesSortAsTheirNumbers() {
        var ids = IntStream.of(0, 9, 10, 9_999, 10_000, 123_456, 999_999).mapToObj(NoteFiles::noteId).toList();
        assertEquals(ids.stream().sorted().toList(), ids);
    }
}
