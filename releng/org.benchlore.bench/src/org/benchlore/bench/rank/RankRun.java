// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.benchlore.bench.BenchException;
import org.benchlore.bench.Folders;
import org.benchlore.bench.metrics.Ranking;
import org.benchlore.bench.peers.Fts5;
import org.benchlore.bench.peers.PlainLucene;
import org.benchlore.bench.product.PlainEntries;

/** Ranks a set with the product and every peer. */
final class RankRun {

    /** How many hits are asked for: what is found below counts as not found, for every engine alike. */
    static final int DEPTH = 100;

    private final PrintWriter progress;

    RankRun(PrintWriter progress) {
        this.progress = progress;
    }

    /** Returns what each reached, the product first. */
    List<Scores> run(RankingSet set) throws IOException, BenchException {
        try (var scratch = new Folders()) {
            var scores = new ArrayList<Scores>();
            for (var maker : makers(scratch)) {
                try (var backend = maker.make()) {
                    scores.add(run(backend, set));
                }
            }
            return scores;
        }
    }

    private interface Maker {
        Backend make() throws IOException;
    }

    private static List<Maker> makers(Folders scratch) {
        return List.of(() -> new ProductBackend(new PlainEntries(scratch.of("product"))),
                () -> new LuceneBackend("Lucene Standard", new PlainLucene(new StandardAnalyzer(), scratch.of("standard"))),
                () -> new LuceneBackend("Lucene English", new PlainLucene(new EnglishAnalyzer(), scratch.of("english"))),
                () -> new Fts5Backend("FTS5 unicode61", new Fts5("unicode61", scratch.of("fts5").resolve("unicode61"))),
                () -> new Fts5Backend("FTS5 porter", new Fts5("porter unicode61", scratch.of("fts5").resolve("porter"))));
    }

    private Scores run(Backend backend, RankingSet set) throws IOException, BenchException {
        progress.println(set.name() + ": " + backend.name() + " ...");
        progress.flush();
        backend.index(set.documents());
        var rankings = new ArrayList<Ranking>();
        for (var query : set.queries()) {
            rankings.add(Ranking.of(backend.search(query.text(), DEPTH)));
        }
        return Scores.of(backend.name(), set, rankings);
    }
}
