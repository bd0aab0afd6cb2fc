// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.search.ConstantScoreQuery;
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
        var found = searcher.search(new ConstantScoreQuery(of), 1).scoreDocs;
        var text = found.length == 0 ? ""
                : searcher.storedFields().document(found[0].doc, Set.of(Fields.TEXT)).get(Fields.TEXT);
        var reasons = new Reasons(analyzer, row, text == null ? "" : text, about.apply(row));
        var excerpt = excerpts.of(text == null ? "" : behindTitle(row.title(), text));
        return new Passage(excerpt.text(), excerpt.marks(), titleMarks(row.title()), reasons.of(groups));
    }

    /** Where a text begins with the title, the passage says what comes after it. */
    private static String behindTitle(String title, String text) {
        return text.regionMatches(true, 0, title, 0, title.length()) ? text.substring(title.length()).stripLeading() : text;
    }

    private List<Mark> titleMarks(String title) {
        var words = Typed.words(analyzer, Fields.ALL, title);
        var stems = words.stream().map(Typed.Word::exact).toList();
        var fitting = new TreeSet<Integer>();
        groups.forEach(group -> mark(group, stems, fitting));
        return fitting.stream().map(place -> new Mark(words.get(place).start(), words.get(place).end())).toList();
    }

    private static void mark(Group group, List<String> stems, Set<Integer> fitting) {
        if (group instanceof Group.Words words) {
            words.own().stems().forEach(stem -> markRun(List.of(stem), stems, fitting));
            words.other().forEach(form -> markRun(form.stems(), stems, fitting));
            for (int i = 0; !words.beginning().isEmpty() && i < stems.size(); i++) {
                if (stems.get(i).startsWith(words.beginning())) {
                    fitting.add(i);
                }
            }
        } else {
            markRun(group instanceof Group.Code code ? code.stems() : ((Group.Number) group).stems(), stems, fitting);
        }
    }

    private static void markRun(List<String> run, List<String> stems, Set<Integer> fitting) {
        for (int i = 0; !run.isEmpty() && i + run.size() <= stems.size(); i++) {
            if (stems.subList(i, i + run.size()).equals(run)) {
                for (int each = 0; each < run.size(); each++) {
                    fitting.add(i + each);
                }
            }
        }
    }
}
