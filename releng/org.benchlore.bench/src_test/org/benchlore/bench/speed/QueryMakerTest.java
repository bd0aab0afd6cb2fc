// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.benchlore.bench.peers.CodeTable;
import org.benchlore.bench.peers.Fts5;
import org.benchlore.bench.peers.PlainLucene;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** Queries have something to find, and the peers find the same. */
class QueryMakerTest {

    private static final Corpus CORPUS = Corpus.of(300, 1);
    private static final int QUERIES = 20;

    @TempDir
    Path folder;

    @Test
    void theSameSeedGivesTheSameQueries() {
        assertEquals(new QueryMaker(CORPUS, 5).make(QueryClass.PHRASE, 9), new QueryMaker(CORPUS, 5).make(QueryClass.PHRASE, 9));
    }

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "WORD_AND_LETTERS")
    void everyQueryFindsSomethingWithPlainLucene(QueryClass kind) throws Exception {
        try (var lucene = new PlainLucene(new StandardAnalyzer(), folder)) {
            lucene.add(CORPUS.notes());
            var engine = new LuceneEngine(Engine.LUCENE, lucene, true);
            for (var typed : new QueryMaker(CORPUS, 2).make(kind, QUERIES)) {
                assertTrue(engine.search(kind, typed) > 0, typed);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "NEAR")
    void fts5FindsAsManyAsPlainLucene(QueryClass kind) throws Exception {
        try (var lucene = new PlainLucene(new StandardAnalyzer(), folder); var table = new Fts5("unicode61", folder.resolve("f"))) {
            lucene.add(CORPUS.notes());
            table.add(CORPUS.notes());
            for (var typed : new QueryMaker(CORPUS, 3).make(kind, QUERIES)) {
                assertEquals(new LuceneEngine(Engine.LUCENE_BARE, lucene, false).search(kind, typed),
                        new Fts5Engine(table).search(kind, typed), typed);
            }
        }
    }

    @Test
    void theTableOfCodesFindsAsManyAsPlainLucene() throws Exception {
        try (var lucene = new PlainLucene(new StandardAnalyzer(), folder); var codes = new CodeTable(folder.resolve("c"))) {
            lucene.add(CORPUS.notes());
            codes.add(CORPUS.notes().stream().map(note -> note.title()).toList(), CORPUS.codes());
            for (var typed : new QueryMaker(CORPUS, 4).make(QueryClass.CODE, QUERIES)) {
                assertEquals(new LuceneEngine(Engine.LUCENE, lucene, true).search(QueryClass.CODE, typed),
                        new CodeTableEngine(codes).search(QueryClass.CODE, typed), typed);
            }
        }
    }
}
