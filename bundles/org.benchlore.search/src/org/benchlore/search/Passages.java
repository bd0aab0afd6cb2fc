// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.benchlore.search.Passage.Mark;
import org.benchlore.store.Row;

/** Says of rows that are seen where what was typed stands in them. */
final class Passages {

    private final IndexSearcher searcher;
    private final Analyzer analyzer;
    private final List<Group> groups;
    private final Function<Row, Collection<String>> about;
    private final Excerpts excerpts;

    /** Prepares passages; {@code about} gives the titles of what a row refers to. */
    Passages(IndexSearcher searcher, Analyzer analyzer, List<Group> groups, Function<Row, Collection<String>> about) {
        this.searcher = searcher;
        this.analyzer = analyzer;
        this.groups = groups;
        this.about = about;
        this.excerpts = new Excerpts(analyzer, groups);
    }

    /** Returns the passage of a row; {@code of} finds its document. */
    Passage of(Row row, Query of) throws IOException {
        var found = searcher.search(of, 1).scoreDocs;
        var text = found.length == 0 ? ""
                : searcher.storedFields().document(found[0].doc, Set.of(Fields.TEXT)).get(Fields.TEXT);
        var excerpt = excerpts.of(text == null ? "" : text);
        var reasons = new Reasons(analyzer, row, text == null ? "" : text, about.apply(row));
        return new Passage(excerpt.text(), excerpt.marks(), titleMarks(row.title()), reasons.of(groups));
    }

    private List<Mark> titleMarks(String title) {
        var stems = Typed.words(analyzer, Fields.ALL, title);
        var marks = new ArrayList<Mark>();
        for (var word : stems) {
            if (groups.stream().anyMatch(group -> fits(group, word.exact()))) {
                marks.add(new Mark(word.start(), word.end()));
            }
        }
        return List.copyOf(marks);
    }

    private static boolean fits(Group group, String stem) {
        if (group instanceof Group.Words words) {
            return words.forms().stream().anyMatch(form -> form.stems().contains(stem))
                    || !words.beginning().isEmpty() && stem.startsWith(words.beginning());
        }
        return (group instanceof Group.Code code ? code.stems() : ((Group.Number) group).stems()).contains(stem);
    }
}
