// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Judgements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading sets. */
class RankingSetTest {

    @TempDir
    Path folder;

    @Test
    void aSetIsReadWithTheQueriesThatHaveSomethingToFind() throws Exception {
        write("d1\tshaft seal\nd2\tcover\tgasket\n", "q1\tseal\nq2\tnothing judged\nq3\tnothing relevant\n",
                "q1 0 d1 2\nq3 0 d2 0\n");
        assertEquals(new RankingSet("set", List.of(new TextEntry("d1", "shaft seal"), new TextEntry("d2", "cover\tgasket")),
                List.of(new TextEntry("q1", "seal")),
                Map.of("q1", new Judgements(Map.of("d1", 2)), "q3", new Judgements(Map.of("d2", 0)))),
                RankingSet.read(folder.resolve("set")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "d1 without a tab | q1\tx | q1 0 d1 1 | docs.tsv:1: this line cannot be read",
        "d1\tx | q1\tx | q1 0 d1 | qrels.txt:1: this line cannot be read",
        "d1\tx | q1\tx | q1 0 d1 yes | qrels.txt:1: this line cannot be read",
        "d1\tx | q9\tx | q1 0 d1 1 | no query has a relevant document"})
    void aMistakeIsNamedWithItsPlace(String documents, String queries, String judgements, String said) throws Exception {
        write(documents, queries, judgements);
        assertTrue(assertThrows(BenchException.class, () -> RankingSet.read(folder.resolve("set"))).getMessage().contains(said));
    }

    @Test
    void aFolderThatIsNoSetIsSaidToBeNone() {
        var failure = assertThrows(BenchException.class, () -> RankingSet.read(folder));
        assertTrue(failure.getMessage().endsWith("give a folder with docs.tsv, queries.tsv and qrels.txt"));
    }

    private void write(String documents, String queries, String judgements) throws Exception {
        var set = Files.createDirectories(folder.resolve("set"));
        Files.writeString(set.resolve("docs.tsv"), documents);
        Files.writeString(set.resolve("queries.tsv"), queries);
        Files.writeString(set.resolve("qrels.txt"), judgements);
    }
}
