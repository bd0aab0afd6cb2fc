// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The form of the built-in list. What its words mean is common practice, no source; see also WordsAgainstDataTest. */
class BuiltInWordsTest {
    private final List<WordEntry> entries = BuiltInWords.entries();

    @Test
    void holdsAtLeast650Entries() {
        assertTrue(entries.size() >= 650, entries.size() + " entries");
    }

    @ParameterizedTest
    @CsvSource({"SHORT, 400", "SPELLING, 200", "SAME, 250", "SLIP, 250"})
    void holdsManyEntriesOfEveryKind(WordKind kind, int least) {
        assertTrue(ofKind(kind).count() >= least, kind + ": " + ofKind(kind).count());
    }

    @Test
    void everyLineIsARemarkOrAnEntryWrittenPlainly() {
        var plain = "#.*||(short|spelling|same|slip) \\| [a-z0-9/&' -]+(, [a-z0-9/&' -]+)+";
        assertEquals(List.of(), BuiltInWords.lines().stream().filter(line -> !line.matches(plain)).toList());
    }

    @Test
    void noSlipIsARightWordElsewhere() {
        var right = entries.stream()
                .flatMap(entry -> entry.kind() == WordKind.SLIP ? Stream.of(entry.target()) : entry.words().stream())
                .map(WordForm::of).collect(Collectors.toSet());
        assertEquals(List.of(), slips().filter(slip -> right.contains(WordForm.of(slip))).toList());
    }

    @Test
    void noSlipLeadsToTwoWords() {
        assertEquals(List.of(), repeated(slips().map(WordForm::of).toList()));
    }

    @Test
    void noEntryHasTheSameWordsAsAnother() {
        assertEquals(List.of(), repeated(entries.stream().map(BuiltInWordsTest::forms).toList()));
    }

    @Test
    void noEntryIsPartOfAnother() {
        var byWord = new HashMap<WordForm, Set<WordEntry>>();
        entries.forEach(entry -> forms(entry).forEach(
                form -> byWord.computeIfAbsent(form, word -> new HashSet<>()).add(entry)));
        assertEquals(List.of(), entries.stream().filter(entry -> byWord.get(WordForm.of(entry.target())).stream()
                .anyMatch(other -> other != entry && forms(other).containsAll(forms(entry)))).toList());
    }

    /** A full word has one entry for all its short forms, and a right word one for all its slips. */
    @ParameterizedTest
    @ValueSource(strings = {"SHORT", "SLIP"})
    void noTargetHasTwoEntries(WordKind kind) {
        assertEquals(List.of(), repeated(ofKind(kind).map(WordEntry::target).toList()));
    }

    @Test
    void noEntryListsAWordThatDiffersFromItsTargetOnlyByItsBlanks() {
        assertEquals(List.of(), ofKind(WordKind.SLIP).filter(entry -> entry.others().stream()
                .anyMatch(word -> WordForm.of(word).joined().equals(WordForm.of(entry.target()).joined()))).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hyd, hydraulic", "same | hyd", "same | o-ring, O ring", "same | a, ",
            "same | one two three four five, six", "alike | tyre, tire"})
    void refusesALineOfAnotherForm(String line) {
        assertThrows(IllegalArgumentException.class, () -> WordEntry.parse(line));
    }

    @Test
    void readsALineIntoItsKindAndWords() {
        assertEquals(new WordEntry(WordKind.SHORT, List.of("hyd", "hydr", "hydraulic")),
                WordEntry.parse("short | hyd, hydr, hydraulic"));
    }

    @Test
    void readsTheSameInEveryLanguageOfTheComputer() {
        var before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertEquals(entries, BuiltInWords.entries());
        } finally {
            Locale.setDefault(before);
        }
    }

    private Stream<WordEntry> ofKind(WordKind kind) {
        return entries.stream().filter(entry -> entry.kind() == kind);
    }

    private Stream<String> slips() {
        return ofKind(WordKind.SLIP).flatMap(entry -> entry.others().stream());
    }

    private static Set<WordForm> forms(WordEntry entry) {
        return entry.words().stream().map(WordForm::of).collect(Collectors.toSet());
    }

    private static <T> List<T> repeated(Collection<T> values) {
        return values.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()))
                .entrySet().stream().filter(entry -> entry.getValue() > 1).map(entry -> entry.getKey()).toList();
    }
}
