// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.uhighlight.Passage;
import org.apache.lucene.search.uhighlight.PassageFormatter;
import org.apache.lucene.search.uhighlight.UnifiedHighlighter;
import org.benchlore.search.Hit.Mark;

/** Cuts the passage that fits best out of a text, on one line, with the fitting places marked. */
final class Excerpts {

    private static final int MOST_CHARACTERS = 160;

    private final Highlighter highlighter;

    /**
     * A passage.
     *
     * @param text one line
     * @param marks fitting places in it
     */
    record Excerpt(String text, List<Mark> marks) {
    }

    Excerpts(IndexSearcher searcher, Analyzer analyzer) {
        this.highlighter = new Highlighter(UnifiedHighlighter.builder(searcher, analyzer)
                .withFormatter(new OneLine()).withMaxNoHighlightPassages(1));
    }

    List<Excerpt> of(Query query, ScoreDoc[] found) throws IOException {
        var documents = Arrays.stream(found).mapToInt(hit -> hit.doc).toArray();
        var excerpts = new ArrayList<Excerpt>();
        for (var passage : highlighter.passages(query, documents)) {
            excerpts.add(passage instanceof Excerpt excerpt ? excerpt : new Excerpt("", List.of()));
        }
        return excerpts;
    }

    /** Lucene gives passages as objects only to those who extend its highlighter. */
    private static final class Highlighter extends UnifiedHighlighter {

        Highlighter(Builder builder) {
            super(builder);
        }

        Object[] passages(Query query, int[] documents) throws IOException {
            return highlightFieldsAsObjects(new String[] {Fields.TEXT}, query, documents, new int[] {1})
                    .get(Fields.TEXT);
        }
    }

    /** Makes one line of a passage. */
    private static final class OneLine extends PassageFormatter {

        @Override
        public Object format(Passage[] passages, String content) {
            var passage = passages[0];
            int start = passage.getStartOffset();
            int end = Math.min(passage.getEndOffset(), start + MOST_CHARACTERS);
            var marks = new ArrayList<Mark>();
            for (int i = 0; i < passage.getNumMatches(); i++) {
                if (passage.getMatchEnds()[i] <= end) {
                    marks.add(new Mark(passage.getMatchStarts()[i] - start, passage.getMatchEnds()[i] - start));
                }
            }
            var text = content.substring(start, end).replaceAll("\\s", " ");
            return new Excerpt(text.stripTrailing(), List.copyOf(marks));
        }
    }
}
