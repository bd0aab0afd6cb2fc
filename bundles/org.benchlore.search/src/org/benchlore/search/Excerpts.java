// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.uhighlight.PassageFormatter;
import org.apache.lucene.search.uhighlight.UnifiedHighlighter;
import org.benchlore.search.Passage.Mark;

/** Cuts the passage that fits best out of a text, on one line, with the fitting places marked. */
final class Excerpts {

    private static final int MOST_CHARACTERS = 160;

    private final Highlighter highlighter;
    private final Query query;

    /**
     * A passage.
     *
     * @param text one line
     * @param marks fitting places in it
     */
    record Excerpt(String text, List<Mark> marks) {
    }

    Excerpts(Analyzer analyzer, List<Group> groups) {
        this.highlighter = new Highlighter(UnifiedHighlighter.builderWithoutSearcher(analyzer)
                .withFormatter(new OneLine()).withMaxNoHighlightPassages(1));
        this.query = query(groups);
    }

    private static Query query(List<Group> groups) {
        var query = new BooleanQuery.Builder();
        for (var group : groups) {
            if (group instanceof Group.Words words) {
                words.own().stems().forEach(stem -> query.add(Queries.term(Fields.ALL, stem), Occur.SHOULD));
                words.other().forEach(form -> query.add(together(form.stems()), Occur.SHOULD));
                if (!words.beginning().isEmpty()) {
                    query.add(new PrefixQuery(new Term(Fields.ALL, words.beginning())), Occur.SHOULD);
                }
            } else {
                var stems = group instanceof Group.Code code ? code.stems() : ((Group.Number) group).stems();
                query.add(together(stems), Occur.SHOULD);
            }
        }
        return query.build();
    }

    private static Query together(List<String> stems) {
        return stems.size() == 1 ? Queries.term(Fields.ALL, stems.get(0))
                : new PhraseQuery(1, Fields.ALL, stems.toArray(String[]::new));
    }

    Excerpt of(String text) throws IOException {
        return text.isBlank() ? new Excerpt("", List.of()) : highlighter.passage(query, text);
    }

    /** Lucene gives passages as objects only to those who extend its highlighter. */
    private static final class Highlighter extends UnifiedHighlighter {

        Highlighter(Builder builder) {
            super(builder);
        }

        Excerpt passage(Query query, String text) throws IOException {
            return highlightWithoutSearcher(Fields.ALL, query, text, 1) instanceof Excerpt excerpt ? excerpt
                    : new Excerpt("", List.of());
        }
    }

    /** Makes one line of a passage. */
    private static final class OneLine extends PassageFormatter {

        @Override
        public Object format(org.apache.lucene.search.uhighlight.Passage[] passages, String content) {
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
