// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.benchlore.terms.WordGroups;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What texts say; the sentences are invented. */
class PhrasesTest {

    private final TradeWords words = new TradeWords(WordGroups.withBuiltIn(List.of(List.of("union", "gland"))));

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Turn out the 12 bolts. | true", "Undoing both screws | true",
        "Do not turn out the bolts | false", "Turn out the light. The bolts are new. | false", "Bolts in by hand | false"})
    void boltsComeOut(String text, boolean expected) {
        assertEquals(expected, words.takesBoltsOut(Text.of(text)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Open the union of the line | true", "Turn the union off | true",
        "Take the pipes off the clips without opening a pipe | false", "Never open a union before | false",
        "Undo the gland | true", "Open the door | false"})
    void aLineIsOpened(String text, boolean expected) {
        assertEquals(expected, words.opensLine(Text.of(text)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Never use the air line | true", "Use the air line | false", "Take it up wet | false"})
    void theAirLineIsForbidden(String text, boolean expected) {
        assertEquals(expected, words.forbidsAirLine(Text.of(text)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"bled twice | true", "Bleeding the brake | true", "Bleed it | true", "It is dry | false"})
    void bleedingIsSpokenOf(String text, boolean expected) {
        assertEquals(expected, words.bleeds(Text.of(text)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Use {tool:sling-jack} | false", "Use the sling | true"})
    void aLinkIsNoWord(String text, boolean expected) {
        assertEquals(expected, words.supports(Text.of(text)));
    }
}
