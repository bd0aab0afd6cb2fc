// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.apache.lucene.analysis.Analyzer;
import org.benchlore.search.Typed.Word;
import org.benchlore.store.Row;
import org.benchlore.terms.CodeReader;

/** Finds fault codes and pieces of numbers in what was typed. A text counts as one only where the library has it. */
final class CodeGroups {

    private static final int SHORTEST_CODE_BEGINNING = 3;
    private static final int LONGEST_NUMBER = 40;
    /** Words that people write around a code. */
    private static final Set<String> AROUND = Set.of("code", "codes", "dtc", "dtcs", "fault", "error", "spn", "fmi",
            "ft", "oc", "cm", "no");

    private final Analyzer analyzer;
    private final CodeLookup library;
    private final Vocabulary vocabulary;

    CodeGroups(Analyzer analyzer, CodeLookup library, Vocabulary vocabulary) {
        this.analyzer = analyzer;
        this.library = library;
        this.vocabulary = vocabulary;
    }

    /** Reads the whole text as a code or a number, since both may be written with blanks. */
    Optional<Group> whole(Typed typed) throws IOException {
        var text = typed.stripped();
        if (!typed.words().stream().allMatch(CodeGroups::mayBePart)) {
            return Optional.empty();
        }
        var code = code(text, text.equals(typed.text()));
        return code.isPresent() ? code : number(text);
    }

    private static boolean mayBePart(Word word) {
        return word.hasDigit() || word.exact().length() <= 3 || AROUND.contains(word.exact());
    }

    private Optional<Group> code(String text, boolean isUnfinished) throws IOException {
        if (text.length() > LONGEST_NUMBER || text.chars().noneMatch(Character::isDigit)) {
            return Optional.empty();
        }
        var forms = new LinkedHashSet<String>();
        CodeReader.read(text).forEach(reading -> forms.add(reading.key().indexForm()));
        var plain = Numbers.form(text);
        forms.add(plain);
        boolean begins = isUnfinished && plain.length() >= SHORTEST_CODE_BEGINNING;
        return group(text, forms, begins);
    }

    private Optional<Group> group(String text, Set<String> forms, boolean begins) throws IOException {
        var known = new ArrayList<String>();
        for (var form : forms) {
            if (vocabulary.has(Fields.CODE, form) || begins && vocabulary.hasBeginning(Fields.CODE, form)) {
                known.add(form);
            }
        }
        var paths = forms.stream().flatMap(library::known).map(Row::path).distinct().toList();
        return known.isEmpty() && paths.isEmpty() ? Optional.empty()
                : Optional.of(new Group.Code(text, List.copyOf(known), paths, begins, stems(text)));
    }

    private Optional<Group> number(String text) throws IOException {
        var piece = Numbers.form(text);
        boolean isOne = text.length() <= LONGEST_NUMBER && piece.length() >= Numbers.SHORTEST_PIECE
                && piece.chars().anyMatch(Character::isDigit) && vocabulary.hasBeginning(Fields.NUMBER, piece);
        return isOne ? Optional.of(new Group.Number(text, piece, stems(text))) : Optional.empty();
    }

    private List<String> stems(String text) {
        return Typed.words(analyzer, Fields.ALL, text).stream().map(Word::exact).toList();
    }

    /** Adds the codes and numbers within a text and returns the words that belong to none of them. */
    List<Word> take(Typed typed, List<Group> groups) throws IOException {
        var taken = new LinkedHashSet<String>();
        for (var key : CodeReader.findIn(typed.text())) {
            var group = group(key.text(), Set.of(key.indexForm()), false);
            if (group.isPresent()) {
                groups.add(group.get());
                taken.add(key.indexForm());
            }
        }
        var left = new ArrayList<Word>();
        var words = typed.words();
        for (int i = 0; i < words.size(); i++) {
            if (taken.stream().noneMatch(words.get(i).exact()::equals) && !isPartOfOne(words.get(i), taken)) {
                i = takeOne(typed, i, groups, left);
            }
        }
        return left;
    }

    private static boolean isPartOfOne(Word word, Set<String> taken) {
        boolean names = AROUND.contains(word.exact()) && !taken.isEmpty();
        return names || word.hasDigit() && taken.stream().anyMatch(form -> form.contains(word.exact()));
    }

    /** Takes the words between two blanks together: 'KT-40-3105' is one number. Returns the last one's place. */
    private int takeOne(Typed typed, int first, List<Group> groups, List<Word> left) throws IOException {
        var words = typed.words();
        int last = first;
        while (last + 1 < words.size() && !hasBlank(typed.text(), words.get(last).end(), words.get(last + 1).start())) {
            last++;
        }
        var text = typed.text().substring(words.get(first).start(), words.get(last).end());
        var code = code(text, typed.isUnfinished(words.get(last)));
        var group = code.isPresent() ? code : number(text);
        if (group.isPresent()) {
            groups.add(group.get());
        } else {
            left.addAll(words.subList(first, last + 1));
        }
        return last;
    }

    private static boolean hasBlank(String text, int from, int to) {
        return text.substring(from, to).chars().anyMatch(Character::isWhitespace);
    }
}
