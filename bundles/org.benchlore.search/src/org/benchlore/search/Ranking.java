// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.QueryRescorer;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TopDocs;

/** Puts the best rows in order by more than the words in them: words close together, status, kind, machine. */
final class Ranking {

    private static final double PER_CENT = 100;
    private static final int MOST_PAIRS = 30;

    private final IndexSearcher searcher;
    private final List<String> stems;
    private final String machine;

    /** Ranks for what was typed; {@code machine} is the asked-for machine, or null. */
    Ranking(IndexSearcher searcher, List<Group> groups, String machine) {
        this.searcher = searcher;
        this.stems = groups.stream().filter(Group.Words.class::isInstance)
                .flatMap(group -> ((Group.Words) group).leading().stems().stream()).toList();
        this.machine = machine;
    }

    /** Returns the rows, best first. */
    List<ScoreDoc> ranked(TopDocs found) throws IOException {
        var rows = found.scoreDocs.length > 1 && stems.size() > 1 ? closeTogether(found).scoreDocs : found.scoreDocs;
        var byPlace = Arrays.stream(rows).sorted(Comparator.comparingInt(row -> row.doc)).toList();
        weigh(byPlace);
        var ranked = new ArrayList<>(byPlace);
        ranked.sort(Comparator.comparingDouble((ScoreDoc row) -> -row.score).thenComparingInt(row -> row.doc));
        return ranked;
    }

    private TopDocs closeTogether(TopDocs found) throws IOException {
        var pairs = new BooleanQuery.Builder();
        for (int i = 0; i + 1 < stems.size() && i < MOST_PAIRS; i++) {
            var pair = new PhraseQuery(Mix.PAIR_SLOP, Fields.ALL, stems.get(i), stems.get(i + 1));
            pairs.add(new BoostQuery(pair, Mix.PAIR), Occur.SHOULD);
        }
        return QueryRescorer.rescore(searcher, found, pairs.build(), 1, found.scoreDocs.length);
    }

    private void weigh(List<ScoreDoc> byPlace) throws IOException {
        var leaves = searcher.getIndexReader().leaves().iterator();
        LeafReaderContext leaf = null;
        NumericDocValues weights = null;
        PostingsEnum ofMachine = null;
        for (var row : byPlace) {
            while (leaf == null || row.doc >= leaf.docBase + leaf.reader().maxDoc()) {
                leaf = leaves.next();
                weights = null;
            }
            if (weights == null) {
                weights = DocValues.getNumeric(leaf.reader(), Fields.WEIGHT);
                ofMachine = machine == null ? null
                        : leaf.reader().postings(new Term(Facet.MACHINE.field(), machine), PostingsEnum.NONE);
            }
            int place = row.doc - leaf.docBase;
            row.score *= (float) (weights.advanceExact(place) ? weights.longValue() / PER_CENT : 1);
            row.score *= (float) (isOn(ofMachine, place) ? Mix.OF_THE_MACHINE / PER_CENT : 1);
        }
    }

    private static boolean isOn(PostingsEnum postings, int place) throws IOException {
        if (postings == null) {
            return false;
        }
        int at = postings.docID() < place ? postings.advance(place) : postings.docID();
        return at == place;
    }
}
