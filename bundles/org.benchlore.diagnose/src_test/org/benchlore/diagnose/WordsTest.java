// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

    private static final Address PLACE = new Address("machines/winch.xmi", "motor");

    private static RankedCause cause(double chance, double low, double high, int events) {
        return new RankedCause(PLACE, "Motor burnt", new Named(PLACE, "Motor"), false, chance, low, high,
                new Counted(events, 40, 0.03, 50, "sometimes", 0), List.of(), List.of(), List.of(), List.of(), "", List.of());
    }

    @ParameterizedTest
    @CsvSource({"1, most likely", "0.5, most likely", "0.49, likely", "0.2, likely", "0.19, possible", "0.05, possible",
        "0.049, less likely"})
    void fourWordsSayHowLikely(double chance, String words) {
        assertEquals(words, Words.standing(chance));
    }

    @ParameterizedTest
    @CsvSource({"0.95, nearly certain", "0.949, about 9 in 10", "0.15, about 2 in 10", "0.149, about 1 in 7",
        "0.01, about 1 in 100", "0.0099, under 1 in 100"})
    void sharesAreCountedInTens(double chance, String words) {
        assertEquals(words, Words.share(chance));
    }

    @ParameterizedTest
    @CsvSource({"0.6, 3, 'most likely, about 6 in 10'", "0.6, 2, most likely", "0.96, 3, nearly certain", "0.96, 2, most likely"})
    void underThreeCasesThereIsNoRate(double chance, int events, String words) {
        assertEquals(words, Words.chance(cause(chance, 0.1, 0.9, events)));
    }

    @ParameterizedTest
    @CsvSource({"0, sometimes, not met by us so far; the book says sometimes", "1, '', met by us once so far; the book does not say how often",
        "2, often, met by us twice so far; the book says often", "3, rarely, seen in 3 of about 40 of ours; the book says rarely"})
    void countsAreSaidAsTheyAre(int events, String frequency, String words) {
        assertEquals(words, Words.counted(new Counted(events, 40, 0.1, 10, frequency, 0)));
    }

    @ParameterizedTest
    @CsvSource({"1, not met by us so far; once on other machines of the family; the book says rarely",
        "2, not met by us so far; twice on other machines of the family; the book says rarely",
        "3, not met by us so far; 3 times on other machines of the family; the book says rarely"})
    void casesOnOtherMachinesOfTheFamilyAreNotOurs(int relatives, String words) {
        assertEquals(words, Words.counted(new Counted(0, 40, 0.1, 10, "rarely", relatives)));
    }

    @Test
    void movesSayFromWhereToWhere() {
        assertEquals("moved up from about 1 in 20 to about 6 in 10: 4C17", Words.move(cause(0.6, 0, 1, 3), new Move("4C17", 0.05, 0.6)));
        assertEquals("moved down from most likely to possible: it", Words.move(cause(0.1, 0, 1, 2), new Move("it", 0.6, 0.1)));
        assertEquals("moved up a little: it", Words.move(cause(0.6, 0, 1, 2), new Move("it", 0.55, 0.6)));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.102, false", "0.1, 0.1021, true", "0.1021, 0.1, true", "0.102, 0.1, false"})
    void aMoveOfNextToNothingIsNotSeen(double from, double to, boolean seen) {
        assertEquals(seen, new Move("it", from, to).isSeen());
        assertEquals(to > from, new Move("it", from, to).isUp());
    }

    @Test
    void howSureIsSaidInTheSameWords() {
        assertEquals("on these counts it may be anything from possible to most likely", Words.sure(cause(0.3, 0.06, 0.6, 3)));
        assertEquals("the counts would have to change a lot to change this", Words.sure(cause(0.3, 0.21, 0.4, 3)));
    }

    @Test
    void witnessesSayWhatTheyAre() {
        assertEquals("note, seen to happen", Words.witness(new Witness(Witness.Kind.NOTE, PLACE, "a", "seen to happen", Optional.empty(), 0)));
        assertEquals("job, found in this job", Words.witness(new Witness(Witness.Kind.JOB, PLACE, "a", "found in this job", Optional.empty(), 0)));
        assertEquals("the book names it", Words.witness(new Witness(Witness.Kind.BOOK, PLACE, "a", "the book names it", Optional.empty(), 0)));
    }

    @ParameterizedTest
    @CsvSource({"119, 119 min", "119.6, 120 min", "120, 2.0 h", "150, 2.5 h", "0.4, 0 min"})
    void timesAreInMinutesOrHours(double minutes, String words) {
        assertEquals(words, Words.minutes(minutes));
    }

    @Test
    void theOrderSaysWhatItSaves() {
        assertEquals("In this order it takes about 57 min as a rule; always the likeliest first about 81 min,"
                + " always the quickest first about 63 min.", Words.time(new Checks(List.of(), 56.5, 80.5, 63)));
    }

    @Test
    void whatStandsInNoBookIsSaid() {
        var answer = new Assessment(new Named(PLACE, "Winch"), List.of(), List.of(), List.of(), List.of(), 0, 0.25, List.of(), List.of(),
                Optional.empty(), new Checks(List.of(), 0, 0, 0), Optional.empty(), new Path(List.of(), List.of(), List.of(),
                        PLACE, Optional.empty(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(), false), List.of());
        assertEquals("Something that stands in no book: likely.", Words.elsewhere(answer));
        assertEquals("", answer.path().text());
    }

    @Test
    void severalFaultsAreNamedTogether() {
        assertEquals("No single cause accounts for all of it; together these do: A; B.",
                Words.together(List.of(new Named(PLACE, "A"), new Named(PLACE, "B"))));
    }
}
