// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.lucene.analysis.Analyzer;
import org.benchlore.search.Form.Way;
import org.benchlore.search.Typed.Word;
import org.benchlore.terms.WordGroups;
import org.benchlore.terms.WordMatch;

/** Finds the forms in which what was typed may stand in the library. */
final class Grouping {

    /** Nobody means a word of the library by a longer one. */
    static final int LONGEST_WORD = 40;
    private static final int SHORTEST_BEGINNING = 2;

    private final Analyzer analyzer;
    private final WordGroups glossary;
    private final Vocabulary vocabulary;
    private final CodeGroups codes;

    Grouping(Analyzer analyzer, WordGroups glossary, CodeLookup library, Vocabulary vocabulary) {
        this.analyzer = analyzer;
        this.glossary = glossary;
        this.vocabulary = vocabulary;
        this.codes = new CodeGroups(analyzer, library, vocabulary);
    }

    /** Returns the words of the index. */
    Vocabulary vocabulary() {
        return vocabulary;
    }

    /** Returns the groups, empty if there is nothing to look for. */
    List<Group> of(Typed typed) throws IOException {
        var whole = codes.whole(typed);
        if (whole.isPresent()) {
            return List.of(whole.get());
        }
        var groups = new ArrayList<Group>();
        var left = codes.take(typed, groups);
        boolean onlyLittle = groups.isEmpty() && left.stream().allMatch(Word::isLittle);
        addWords(typed, left, onlyLittle, groups);
        return groups;
    }

    /** Little words such as 'the' are looked for only where nothing else was typed. */
    private void addWords(Typed typed, List<Word> words, boolean littleToo, List<Group> groups) throws IOException {
        var runs = runs(words);
        int at = 0;
        while (at < words.size()) {
            var run = runs.get(at);
            int length = run == null ? 1 : run.length();
            var typedWords = words.subList(at, at + length);
            if (run != null || littleToo || !words.get(at).isLittle()) {
                groups.add(group(typed, typedWords, run == null ? List.of() : run.phrases()));
            }
            at += length;
        }
    }

    private Map<Integer, WordMatch> runs(List<Word> words) {
        var runs = new HashMap<Integer, WordMatch>();
        glossary.alternatives(words.stream().map(Word::exact).toList()).forEach(match -> runs.put(match.start(), match));
        return runs;
    }

    private Group group(Typed typed, List<Word> words, List<String> meanings) throws IOException {
        var text = String.join(" ", words.stream().map(Word::exact).toList());
        var forms = new ArrayList<Form>();
        forms.add(new Form(Way.TYPED, text, words.stream().filter(word -> !word.isLittle()).map(Word::stem).toList()));
        for (var meaning : meanings) {
            add(Way.MEANS, meaning, forms);
        }
        boolean known = vocabulary.hasAny(words) || isKnown(forms);
        var beginning = beginning(typed, words);
        if (beginning.length() > BeginningsFilter.LONGEST) {
            var longer = vocabulary.beginning(beginning);
            longer.words().forEach(word -> add(Way.BEGINS, word, forms));
            known |= !longer.words().isEmpty();
            beginning = longer.isAll() ? "" : beginning;
        }
        if (!known && words.size() == 1 && (beginning.isEmpty() || !vocabulary.begins(beginning))) {
            vocabulary.near(words.get(0).exact()).forEach(near -> add(Way.NEAR, near, forms));
        }
        return new Group.Words(text, forms, beginning, known, leading(words, forms));
    }

    private Form leading(List<Word> words, List<Form> forms) throws IOException {
        return forms.size() == 1 || vocabulary.hasAny(words) ? forms.get(0) : forms.get(1);
    }

    /** Returns what longer words may begin with: the last word while it is typed, unless it is a frequent one itself. */
    private String beginning(Typed typed, List<Word> words) throws IOException {
        var last = words.get(words.size() - 1);
        boolean may = words.size() == 1 && typed.isUnfinished(last) && last.exact().length() >= SHORTEST_BEGINNING
                && (last.isLittle() || vocabulary.elements(Fields.ALL, last.stem()) < Mix.OFTEN);
        return may ? last.exact() : "";
    }

    private boolean isKnown(List<Form> forms) throws IOException {
        for (var form : forms) {
            boolean all = !form.stems().isEmpty();
            for (var stem : form.stems()) {
                all &= vocabulary.has(Fields.ALL, stem);
            }
            if (all) {
                return true;
            }
        }
        return false;
    }

    private void add(Way way, String words, List<Form> forms) {
        var stems = Typed.words(analyzer, Fields.ALL, words).stream().map(Word::exact).toList();
        if (!stems.isEmpty() && forms.stream().noneMatch(form -> form.stems().equals(stems))) {
            forms.add(new Form(way, words, stems));
        }
    }
}
