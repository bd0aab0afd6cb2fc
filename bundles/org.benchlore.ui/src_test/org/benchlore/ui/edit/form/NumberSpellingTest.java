// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberSpellingTest {

    @ParameterizedTest
    @CsvSource({"qb20114a, QB-20.114 A", "QB 20 114 A, QB-20.114 A", "4c17, 4C 17", "spn 520192/31, SPN 520192 FMI 31"})
    void isOneOfThemHoweverItIsSeparated(String typed, String number) {
        assertEquals(true, NumberSpelling.of(typed).isOneOf(List.of("X-1", number)));
    }

    @ParameterizedTest
    @CsvSource({"20.114, true", "0114a, true", "114b, false", "20, false", "'', false"})
    void aPieceOfThreeCharactersIsEnough(String typed, boolean isWithin) {
        assertEquals(isWithin, NumberSpelling.of(typed).isWithin(List.of("QB-20.114 A")));
    }
}
