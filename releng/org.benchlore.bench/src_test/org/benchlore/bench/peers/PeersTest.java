// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.peers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The peers do what they are measured for. */
class PeersTest {

    private static final List<TextEntry> NOTES = List.of(new TextEntry("a", "Worn seals", "on the input shaft"),
            new TextEntry("b", "shaft seal leaks, shaft seal leaks"), new TextEntry("c", "brake pipe"));

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"seal shaft, b a", "seals, a", "pipe leaks, c b", "zzz, ''", "'', ''"})
    void fts5FindsAnyOfTheWordsBestFirst(String typed, String found) throws IOException {
        try (var table = new Fts5("unicode61", folder.resolve("fts5"))) {
            table.add(NOTES);
            assertEquals(found, ids(table.search(Fts5.anyOf(typed), 10)));
        }
    }

    @Test
    void porterKnowsThePlural() throws IOException {
        try (var table = new Fts5("porter unicode61", folder.resolve("fts5"))) {
            table.add(NOTES);
            assertEquals("b a", ids(table.search(Fts5.anyOf("seals"), 10)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"seal\"", "NOT", "sea*l", "(seal", "title:seal", "AND OR NEAR(", "\u00e9\u0301"})
    void nothingTypedIsAnOperatorOfFts5(String typed) throws IOException {
        try (var table = new Fts5("unicode61", folder.resolve("fts5"))) {
            table.add(NOTES);
            assertTrue(table.search(Fts5.anyOf(typed), 10).size() <= NOTES.size());
        }
    }

    @Test
    void anUpdateOfFts5IsFoundAtOnce() throws IOException {
        try (var table = new Fts5("unicode61", folder.resolve("fts5"))) {
            table.add(NOTES);
            table.update(3, "clutch pipe");
            assertEquals("c", ids(table.search(Fts5.anyOf("clutch"), 10)));
            assertEquals("", ids(table.search(Fts5.anyOf("brake"), 10)));
        }
    }

    @ParameterizedTest
    @CsvSource({"seal, b", "worn SEALS, a", "pipe leaks, c b", "zzz, ''", "'', ''"})
    void luceneFindsAnyOfTheWords(String typed, String found) throws IOException {
        try (var lucene = new PlainLucene(new StandardAnalyzer(), folder)) {
            lucene.add(NOTES);
            assertEquals(found, ids(lucene.search(lucene.anyOf(typed), 10)));
            assertEquals(found.isEmpty() ? 0 : found.split(" ").length, lucene.searchOnly(lucene.anyOf(typed), 10));
        }
    }

    @Test
    void theEnglishAnalysisKnowsThePlural() throws IOException {
        try (var lucene = new PlainLucene(new EnglishAnalyzer(), folder)) {
            lucene.add(NOTES);
            assertEquals("b a", ids(lucene.search(lucene.anyOf("seals"), 10)));
        }
    }

    @Test
    void anUpdateOfLuceneIsFoundAtOnceAndReplaces() throws IOException {
        try (var lucene = new PlainLucene(new StandardAnalyzer(), folder)) {
            lucene.add(NOTES);
            lucene.update(new TextEntry("c", "clutch pipe"));
            assertEquals("c", ids(lucene.search(lucene.anyOf("clutch pipe"), 10)));
            assertEquals("", ids(lucene.search(lucene.anyOf("brake"), 10)));
        }
    }

    @Test
    void luceneKeepsItsIndexBetweenTwoOpenings() throws IOException {
        try (var lucene = new PlainLucene(new StandardAnalyzer(), folder)) {
            lucene.add(NOTES);
        }
        try (var lucene = new PlainLucene(new StandardAnalyzer(), folder)) {
            assertEquals("c", ids(lucene.search(lucene.phrase("brake pipe"), 10)));
        }
    }

    @Test
    void theTableOfCodesGivesTheRowsOfACode() throws IOException {
        try (var codes = new CodeTable(folder.resolve("codes"))) {
            codes.add(List.of("first", "second", "third"), Map.of("P0101", List.of(0, 2), "C1200", List.of(1)));
            assertEquals(List.of("first", "third"), codes.find("P0101", 10));
            assertEquals(List.of("first"), codes.find("P0101", 1));
            assertEquals(List.of(), codes.find("P01", 10));
        }
    }

    private static String ids(List<Ranked> found) {
        return String.join(" ", found.stream().map(Ranked::id).toList());
    }
}
