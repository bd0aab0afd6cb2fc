// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.Query;
import org.benchlore.search.Typed.Word;

/**
 * Pieces of the words typed, three to five letters with the ends marked: they find shorthand and misspellings in
 * short texts. In long texts they find anything, so their weight falls with the length.
 */
final class Pieces {

    private static final int MOST_MEANINGS = 3;
    private static final int MOST_PIECES = 500;

    private final Analyzer analyzer;
    private final List<Query> queries = new ArrayList<>();
    private int pieces;

    private Pieces(Analyzer analyzer) {
        this.analyzer = analyzer;
    }

    static List<Query> of(Analyzer analyzer, Vocabulary vocabulary, Typed typed, List<Group> groups)
            throws IOException {
        var pieces = new Pieces(analyzer);
        double share = vocabulary.shareInPieces();
        float weight = Mix.grams(share, vocabulary.meanWords(), typed.words().size());
        if (weight >= Mix.LEAST_GRAMS) {
            pieces.addAll(typed, groups, weight);
        } else if (share > 0) {
            pieces.addUnknown(groups);
        }
        return pieces.queries;
    }

    private void addAll(Typed typed, List<Group> groups, float weight) {
        for (Word word : typed.words()) {
            add(word.exact(), weight);
        }
        for (var group : groups) {
            if (group instanceof Group.Words words) {
                var other = words.other().limit(MOST_MEANINGS).toList();
                other.forEach(form -> add(form.words(), weight * Mix.GRAMS_OF_MEANINGS / other.size()));
            }
        }
    }

    /** A word that is in no element, nor one nearly so, may still be like one. */
    private void addUnknown(List<Group> groups) {
        for (var group : groups) {
            if (group instanceof Group.Words words && !words.isKnown() && words.forms().size() == 1
                    && words.typed().chars().noneMatch(Character::isDigit)) {
                add(words.typed(), Mix.GRAMS);
            }
        }
    }

    private void add(String text, float weight) {
        var found = Typed.words(analyzer, Fields.GRAMS, text).stream().map(Word::exact).distinct().toList();
        pieces += found.size();
        if (!found.isEmpty() && pieces <= MOST_PIECES) {
            var query = new BooleanQuery.Builder();
            found.forEach(piece -> query.add(Queries.term(Fields.GRAMS, piece), Occur.SHOULD));
            query.setMinimumNumberShouldMatch((int) Math.ceil(found.size() * Mix.LEAST_SHARE_OF_GRAMS));
            queries.add(new BoostQuery(query.build(), weight));
        }
    }
}
