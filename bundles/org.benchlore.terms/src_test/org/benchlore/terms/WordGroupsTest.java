// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Examples from the built-in list are common practice of the trade, no source. */
class WordGroupsTest {
    private static final List<List<String>> NO_LIBRARY = List.of();
    private final WordGroups builtIn = WordGroups.withBuiltIn(NO_LIBRARY);

    @ParameterizedTest
    @CsvSource({"hyd, hydraulic", "hydraulic, hyd", "pto, power take off", "power take off, pto", "tyre, tire",
            "tire, tyre", "spanner, wrench", "wrench, spanner", "w/o, without", "without, w/o", "gear box, gearbox",
            "gearbox, gear box", "4x4, four wheel drive"})
    void findsBothWays(String typed, String other) {
        assertTrue(onlyMatch(typed).contains(other), onlyMatch(typed).toString());
    }

    @ParameterizedTest
    @CsvSource({"guage, gauge", "hydralic, hydraulic", "resevoir, reservoir", "solonoid, solenoid"})
    void leadsFromASlipToTheRightWordFirstAndNeverBack(String slip, String right) {
        assertEquals(right, onlyMatch(slip).get(0));
        assertFalse(onlyMatch(right).contains(slip));
    }

    @ParameterizedTest
    @CsvSource({"P.T.O., power take off", "p t o, power take off", "Teach-In, learn in", "teachin, teach in",
            "W/O, without", "w o, without", "L/H, left hand", "assy's, assembly", "ASSY\u2019S, assembly",
            "GEAR-BOX, gearbox", "by-pass, bypass"})
    void doesNotMindCapitalsAndMarks(String typed, String other) {
        assertTrue(onlyMatch(typed).contains(other), onlyMatch(typed).toString());
    }

    @ParameterizedTest
    @CsvSource({"tyres, tire", "brgs, bearing", "assemblies, assy", "gear boxes, gearbox", "replaced, repl",
            "galvanised, galvanize", "pressurising, pressurize", "grounding, earth", "seperated, separate"})
    void findsPluralsAndVerbFormsByTheirBase(String typed, String other) {
        assertTrue(onlyMatch(typed).contains(other), onlyMatch(typed).toString());
    }

    @Test
    void aShortFormLeadsToEachOfItsMeanings() {
        assertTrue(onlyMatch("o/s").containsAll(List.of("offside", "out of service", "outside")));
    }

    @Test
    void aFullWordDoesNotLeadThroughAShortFormToAnotherMeaning() {
        assertFalse(onlyMatch("outside").contains("offside"));
    }

    @Test
    void leadsFromAShortFormOnToItsEquals() {
        assertTrue(onlyMatch("aircon").contains("air conditioner"));
    }

    /** Marks that matter, digits, and words that only look like a form of a listed one. */
    @ParameterizedTest
    @CsvSource({"us, unserviceable", "wo, without", "w/o, work order", "hyd2, hydraulic", "p0841, power",
            "4 x 4, four wheel drive", "manifold, manifold", "press, pressure", "class, clear"})
    void doesNotTakeAWordForAnother(String typed, String other) {
        assertFalse(onlyMatch(typed).contains(other), onlyMatch(typed).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"us", "hyd2", "p0841", "12", "4 x 4", "manifold", "press", "class", "the", "unit"})
    void offersNothingForAWordThatIsNotListed(String typed) {
        assertEquals(List.of(), builtIn.alternatives(words(typed)));
    }

    @Test
    void takesTheLongestRunAtEachPlace() {
        var found = builtIn.alternatives(words("check power take off oil seal u/s"));
        assertEquals(List.of("0+1", "1+3", "4+2", "6+1"),
                found.stream().map(match -> match.start() + "+" + match.length()).toList());
    }

    @Test
    void findsARunOfFourWords() {
        assertEquals(List.of(new WordMatch(1, 4, List.of("x"))), new WordGroups(List.of(), List.of(
                List.of("out of gear box", "x"), List.of("gear", "y"))).alternatives(words("is out of gear box")));
    }

    @Test
    void theLibrarysWordsComeFirst() {
        var groups = WordGroups.withBuiltIn(List.of(List.of("pto", "side drive")));
        assertEquals(List.of("side drive", "power take off"), groups.alternatives(List.of("pto")).get(0).phrases());
    }

    @Test
    void theLibraryAddsWordsOfItsOwnBothWays() {
        var groups = WordGroups.withBuiltIn(List.of(List.of("hook box", "engagement unit", "he-unit")));
        assertEquals(List.of("hook box", "engagement unit"), groups.alternatives(List.of("HE unit")).get(0).phrases());
        assertEquals(List.of("hook box", "he-unit"),
                groups.alternatives(List.of("engagement", "unit")).get(0).phrases());
    }

    @Test
    void theLibrarysWordIsReachedThroughABuiltInSpelling() {
        var groups = WordGroups.withBuiltIn(List.of(List.of("stabiliser", "levelling leg")));
        assertTrue(groups.alternatives(List.of("stabilizer")).get(0).phrases().contains("levelling leg"));
    }

    @Test
    void aWordOfTheLibraryIsNoSlip() {
        var groups = WordGroups.withBuiltIn(List.of(List.of("axel", "winch number two")));
        assertEquals(List.of("winch number two"), groups.alternatives(List.of("axel")).get(0).phrases());
    }

    @Test
    void passesOverUnfinishedEntriesOfTheLibrary() {
        var groups = new WordGroups(List.of(), List.of(List.of(), List.of("alone"), List.of("", " ", "-"),
                List.of("one", "", "1")));
        assertEquals(List.of(List.of("1")), groups.alternatives(words("alone - one")).stream()
                .map(WordMatch::phrases).toList());
    }

    @Test
    void keepsALibraryPhraseOfMoreThanFourWordsAsAnAlternative() {
        var groups = new WordGroups(List.of(), List.of(List.of("lx", "a phrase of five words")));
        assertEquals(List.of("a phrase of five words"), groups.alternatives(List.of("lx")).get(0).phrases());
    }

    @Test
    void noAlternativeIsTheRunItself() {
        assertEquals(List.of(), BuiltInWords.entries().stream().flatMap(entry -> entry.words().stream())
                .filter(word -> onlyMatch(word).contains(word)).toList());
    }

    @Test
    void everyWordOfTheListIsFoundAsOneRun() {
        assertEquals(List.of(), BuiltInWords.entries().stream().flatMap(entry -> entry.others().stream())
                .filter(word -> onlyMatch(word).isEmpty()).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", "'s", "///", "\ud800", "e\u0301 \u00df \u0130", "'' 's", "\u4e2d\u6587",
            "a'"})
    void takesAnyText(String typed) {
        assertEquals(List.of(), builtIn.alternatives(Arrays.asList(typed.split(" ", -1))));
    }

    @Test
    void takesRandomTextAndStaysWithinIt() {
        var random = new Random(7);
        for (int round = 0; round < 500; round++) {
            var typed = random.ints(random.nextInt(40), 0, 0x3000).collect(StringBuilder::new,
                    StringBuilder::appendCodePoint, StringBuilder::append).toString();
            var words = Arrays.asList(typed.split("[ ,]", -1));
            assertTrue(builtIn.alternatives(words).stream().allMatch(
                    match -> match.start() + match.length() <= words.size()), typed);
        }
    }

    @Test
    void takesTimeInProportionToTheText() {
        var longWord = String.join("/", Collections.nCopies(50_000, "p"));
        var words = Collections.nCopies(100_000, "power");
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> {
            builtIn.alternatives(List.of(longWord));
            builtIn.alternatives(words);
        });
    }

    private List<String> onlyMatch(String typed) {
        var words = words(typed);
        var found = builtIn.alternatives(words);
        return found.size() == 1 && found.get(0).length() == words.size() ? found.get(0).phrases() : List.of();
    }

    private static List<String> words(String typed) {
        return Arrays.asList(typed.split(" "));
    }
}
