// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.NamedMatches;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Weight;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/** Makes hits out of found documents: the row from the catalogue, the passage and the reasons from the index. */
final class HitMaker {

    private final Library library;
    private final IndexSearcher searcher;
    private final Query query;
    private final Weight weight;
    private final Excerpts excerpts;

    HitMaker(Library library, Analyzer analyzer, IndexSearcher searcher, Query query) throws IOException {
        this.library = library;
        this.searcher = searcher;
        this.query = query;
        this.weight = searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
        this.excerpts = new Excerpts(searcher, analyzer);
    }

    List<Hit> hits(ScoreDoc[] found) throws IOException {
        var passages = excerpts.of(query, found);
        var hits = new ArrayList<Hit>();
        for (int i = 0; i < found.length; i++) {
            var row = row(found[i].doc);
            if (row != null) {
                hits.add(new Hit(row, passages.get(i).text(), passages.get(i).marks(), why(found[i].doc)));
            }
        }
        return List.copyOf(hits);
    }

    private Row row(int document) throws IOException {
        var leaves = searcher.getIndexReader().leaves();
        var leaf = leaves.get(ReaderUtil.subIndex(document, leaves));
        var paths = DocValues.getSorted(leaf.reader(), Fields.PATH);
        if (!paths.advanceExact(document - leaf.docBase)) {
            return null;
        }
        var path = paths.lookupOrd(paths.ordValue()).utf8ToString();
        return library.catalogue().entry(path).flatMap(entry -> entry.row()).orElse(null);
    }

    private List<String> why(int document) throws IOException {
        var leaves = searcher.getIndexReader().leaves();
        var leaf = leaves.get(ReaderUtil.subIndex(document, leaves));
        var matches = weight.matches(leaf, document - leaf.docBase);
        if (matches == null) {
            return List.of();
        }
        var reasons = new LinkedHashSet<String>();
        NamedMatches.findNamedMatches(matches).forEach(match -> reasons.add(match.getName()));
        return reasons.stream().sorted(java.util.Comparator.comparingInt(HitMaker::rank)).toList();
    }

    private static int rank(String reason) {
        return reason.startsWith("code") ? 0 : reason.equals("in the title") ? 1 : reason.equals("in the symptoms") ? 2
                : reason.equals("in the text") ? 3 : 4;
    }
}
