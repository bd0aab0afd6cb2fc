// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.TopScoreDocCollectorManager;
import org.apache.lucene.search.TotalHits;
import org.benchlore.store.Catalogue;

/**
 * Answers one query in one state of the index: first what holds every word, then, where that is not enough to fill the
 * list, what holds some.
 */
final class Finder {

    private final IndexSearcher searcher;
    private final Catalogue catalogue;
    private final Analyzer analyzer;
    private final Query query;
    private final Typed typed;
    private final List<Group> groups;
    private final Vocabulary vocabulary;
    private final Queries queries;
    private final Narrowing narrowing;
    private final List<Hit> hits = new ArrayList<>();
    private final Set<Integer> taken = new HashSet<>();

    /** Prepares an answer; {@code current} leaves out what is laid over by newer files. */
    Finder(IndexSearcher searcher, Catalogue catalogue, Analyzer analyzer, Query query, Grouping grouping,
            UnaryOperator<org.apache.lucene.search.Query> current) throws IOException {
        this.searcher = searcher;
        this.catalogue = catalogue;
        this.analyzer = analyzer;
        this.query = query;
        this.typed = Typed.of(analyzer, query.text());
        this.groups = grouping.of(typed);
        this.vocabulary = grouping.vocabulary();
        this.queries = new Queries(groups, vocabulary);
        this.narrowing = new Narrowing(query.narrowedTo(), current);
    }

    Results results() throws IOException {
        if (groups.isEmpty()) {
            return Results.NONE;
        }
        var asked = queries.every();
        var total = add(asked, true);
        if (hits.size() < query.limit()) {
            var pieces = Pieces.of(analyzer, vocabulary, typed, groups);
            if (queries.canLoosen() || !pieces.isEmpty()) {
                boolean none = hits.isEmpty();
                var some = queries.some(pieces);
                var looser = add(some, false);
                asked = none ? some : asked;
                total = none ? looser : total;
            }
        }
        return hits.isEmpty() ? Results.NONE : results(asked, total);
    }

    private Results results(org.apache.lucene.search.Query asked, TotalHits total) throws IOException {
        if (!query.counted()) {
            return new Results(List.copyOf(hits), total.value, total.relation != TotalHits.Relation.EQUAL_TO, Map.of(),
                    meant());
        }
        var counted = new Counting(searcher, narrowing).of(asked);
        return new Results(List.copyOf(hits), counted.total(), searcher.timedOut(), counted.counts(), meant());
    }

    private TotalHits add(org.apache.lucene.search.Query asked, boolean whole) throws IOException {
        int window = Math.max(Mix.LEAST_WINDOW, query.limit() * Mix.WINDOW) + taken.size();
        var found = searcher.search(narrowing.of(asked), new TopScoreDocCollectorManager(window, null, window));
        var ranked = new Ranking(searcher, groups, query.narrowedTo().get(Facet.MACHINE)).ranked(notTaken(found));
        for (ScoreDoc row : ranked) {
            if (hits.size() == query.limit()) {
                break;
            }
            taken.add(row.doc);
            Rows.of(searcher, row.doc, catalogue).ifPresent(known -> hits.add(new Hit(known, row.score, whole)));
        }
        return found.totalHits;
    }

    private TopDocs notTaken(TopDocs found) {
        if (taken.isEmpty()) {
            return found;
        }
        var left = java.util.Arrays.stream(found.scoreDocs).filter(row -> !taken.contains(row.doc))
                .toArray(ScoreDoc[]::new);
        return new TopDocs(found.totalHits, left);
    }

    /** Puts the likeliest word in the place of each that is in no element. */
    private Optional<String> meant() {
        var text = typed.text();
        for (var group : groups) {
            if (group instanceof Group.Words words && !words.isKnown()) {
                var near = words.other().filter(form -> form.way() == Form.Way.NEAR).findFirst();
                var place = typed.words().stream().filter(word -> word.exact().equals(words.typed())).findFirst();
                if (near.isPresent() && place.isPresent()) {
                    text = replaced(text, place.get(), near.get().words());
                }
            }
        }
        return text.equals(typed.text()) ? Optional.empty() : Optional.of(text.strip());
    }

    /** Places stay right from the end of the text only, so the word is looked for by its letters. */
    private String replaced(String text, Typed.Word word, String by) {
        return text.replace(typed.text().substring(word.start(), word.end()), by);
    }
}
