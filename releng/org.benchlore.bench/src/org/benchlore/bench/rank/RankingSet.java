// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Judgements;

/**
 * Documents, queries and what is relevant.
 *
 * @param name name of its folder
 * @param documents the documents
 * @param queries the queries that have at least one relevant document
 * @param judgements by query id
 */
record RankingSet(String name, List<TextEntry> documents, List<TextEntry> queries, Map<String, Judgements> judgements) {

    /**
     * Reads {@code docs.tsv} and {@code queries.tsv} (id, tab, text) and {@code qrels.txt} (query, 0, document, grade,
     * with blanks between).
     */
    static RankingSet read(Path folder) throws BenchException {
        var judgements = judgements(folder.resolve("qrels.txt"));
        var queries = entries(folder.resolve("queries.tsv")).stream()
                .filter(query -> judgements.containsKey(query.id()) && judgements.get(query.id()).relevant() > 0).toList();
        if (queries.isEmpty()) {
            throw new BenchException(folder + ": no query has a relevant document; check that the ids of queries.tsv and"
                    + " qrels.txt are the same");
        }
        return new RankingSet(String.valueOf(folder.toAbsolutePath().normalize().getFileName()),
                entries(folder.resolve("docs.tsv")), queries, judgements);
    }

    private static List<TextEntry> entries(Path file) throws BenchException {
        var entries = new ArrayList<TextEntry>();
        for (var line : lines(file)) {
            int tab = line.indexOf('\t');
            if (tab < 1) {
                throw wrong(file, entries.size() + 1, "write an id, a tab and the text");
            }
            entries.add(new TextEntry(line.substring(0, tab), line.substring(tab + 1)));
        }
        return List.copyOf(entries);
    }

    private static Map<String, Judgements> judgements(Path file) throws BenchException {
        var grades = new HashMap<String, Map<String, Integer>>();
        int number = 0;
        for (var line : lines(file)) {
            number++;
            var parts = line.strip().split("\\s+");
            if (parts.length != 4 || !parts[3].matches("-?[0-9]{1,9}")) {
                throw wrong(file, number, "write query, 0, document and grade with blanks between");
            }
            grades.computeIfAbsent(parts[0], query -> new HashMap<>()).put(parts[2], Integer.parseInt(parts[3]));
        }
        return grades.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, entry -> new Judgements(entry.getValue())));
    }

    private static List<String> lines(Path file) throws BenchException {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new BenchException(file + " cannot be read: give a folder with docs.tsv, queries.tsv and qrels.txt", e);
        }
    }

    private static BenchException wrong(Path file, int line, String advice) {
        return new BenchException(file + ":" + line + ": this line cannot be read; " + advice);
    }
}
