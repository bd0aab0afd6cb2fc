// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepLinesTest {

    @ParameterizedTest
    @CsvSource({"1. Slacken, Slacken", "12) Slacken, Slacken", "3 - Slacken, Slacken", "- Slacken, Slacken",
        "'   4.  Slacken ', Slacken", "3.5 mm of play, 3.5 mm of play", "2 bolts, 2 bolts", "10 Nm, 10 Nm",
        "-5 °C at most, -5 °C at most"})
    void aNumberInFrontGoesAndAQuantityStays(String line, String step) {
        assertEquals(List.of(step), StepLines.of(line));
    }

    @Test
    void blankLinesMakeNoSteps() {
        assertEquals(List.of("One", "Two"), StepLines.of("1. One\n\n   \n2. Two\n"));
    }
}
