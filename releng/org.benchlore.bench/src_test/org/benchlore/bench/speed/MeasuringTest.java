// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.benchlore.bench.Folders;
import org.benchlore.bench.peers.Fts5;
import org.benchlore.bench.peers.PlainLucene;
import org.benchlore.bench.product.NoteFiles;
import org.benchlore.bench.product.Product;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The measuring itself: who is asked, how often, and whether what was saved is really found. */
class MeasuringTest {

    @TempDir
    Path folder;

    /** Knows codes only and finds one row for every second query. */
    private static class Counting implements Engine {

        int asked;

        @Override
        public String name() {
            return "counting";
        }

        @Override
        public boolean knows(QueryClass kind) {
            return kind == QueryClass.CODE;
        }

        @Override
        public int search(QueryClass kind, String typed) {
            return asked++ % 2;
        }
    }

    @Test
    void anEngineIsAskedOnlyWhatItKnowsAndEveryRoundTheSame() throws Exception {
        var engine = new Counting();
        var queries = new EnumMap<QueryClass, List<String>>(QueryClass.class);
        queries.put(QueryClass.TERM, List.of("a"));
        queries.put(QueryClass.CODE, List.of("b", "c", "d", "e"));
        var times = QueryTimes.measure(List.of(engine), queries, 3);
        assertEquals((3 + 2) * 4, engine.asked);
        assertEquals(0.5, times.of(QueryClass.CODE, "counting").orElseThrow().finds());
        assertTrue(times.of(QueryClass.TERM, "counting").isEmpty());
    }

    @Test
    void whatIsAskedToWarmUpDoesNotCount() throws Exception {
        var engine = new Counting() {
            @Override
            public int search(QueryClass kind, String typed) {
                asked++;
                return asked > 2 ? 1 : 0;
            }
        };
        var times = QueryTimes.measure(List.of(engine), new EnumMap<>(Map.of(QueryClass.CODE, List.of("b"))), 1);
        assertEquals(1, times.of(QueryClass.CODE, "counting").orElseThrow().finds());
    }

    @Test
    void anIndexIsBuiltInAnEmptyFolderEveryRoundAndWeighed() throws Exception {
        try (var folders = new Folders()) {
            var builders = new LinkedHashMap<String, Building.Builder>();
            builders.put("one", place -> Files.write(Files.createFile(place.resolve("file")), new byte[123]));
            assertEquals(123, Building.measure(builders, folders, 3).get("one").bytes());
            assertTrue(Files.exists(folders.of("one").resolve("file")));
        }
    }

    @Test
    void whatIsSavedIsFoundAndNothingIsCommitted() throws Exception {
        var corpus = Corpus.of(100, 1);
        new NoteFiles(folder.resolve("library")).write(corpus.notes());
        try (var product = Product.of(Product.library(folder.resolve("library"), folder.resolve("cache")), folder.resolve("index"));
                var lucene = new PlainLucene(new StandardAnalyzer(), folder.resolve("lucene"));
                var fts5 = new Fts5("unicode61", folder.resolve("fts5"))) {
            lucene.add(corpus.notes());
            fts5.add(corpus.notes());
            var result = new Updates(corpus, product, lucene, fts5, 1).measure(1, 3, folder.resolve("index"));
            assertEquals(Set.of(Updates.SAVING, Updates.INDEXING, Updates.WHOLE, Updates.LUCENE, Updates.FTS5),
                    result.cpu().keySet());
            assertFalse(result.commits());
            assertEquals(1, product.find("upd1x2", 10).size());
        }
    }
}
