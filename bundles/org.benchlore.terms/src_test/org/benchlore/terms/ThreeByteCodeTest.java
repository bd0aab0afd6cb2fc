// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreeByteCodeTest {
    /** Seen in a published file of test vectors for ISO 15031-6 / SAE J2012 text; the name was not kept. */
    @ParameterizedTest
    @CsvSource({"000000, P0000-00", "56789A, C1678-9A", "A5B6C7, B25B6-C7", "FFFFFF, U3FFF-FF"})
    void agreesWithPublishedVectors(String bytes, String text) {
        assertEquals(text, ThreeByteCode.of(Integer.parseInt(bytes, 16)).text());
    }

    /** Worked out from the bit layout. */
    @ParameterizedTest
    @CsvSource({"012345, P0123-45", "074114, P0741-14", "50F0FF, C10F0-FF", "E10000, U2100-00", "BFEDCB, B3FED-CB"})
    void agreesWithWorkedVectors(String bytes, String text) {
        var code = ThreeByteCode.of(Integer.parseInt(bytes, 16));
        assertEquals(text, code.text());
        assertEquals(code, ThreeByteCode.of(text));
    }

    /** A public learning guide prints P0301 and C0045 for these bytes, which is wrong; the bit layout decides. */
    @ParameterizedTest
    @CsvSource({"01 03 01, P0103-01, 0301", "02 00 45, P0200-45, 0045"})
    void doesNotFallForTheMisprintedGuide(String bytes, String right, String wrongDigits) {
        var readings = CodeReader.read(bytes);
        assertEquals(new CodeKey(CodeScheme.ISO14229, right), readings.get(0).key());
        Predicate<CodeReading> wrong = reading -> reading.key().scheme() != CodeScheme.MAKER
                && reading.key().text().contains(wrongDigits);
        assertTrue(readings.stream().noneMatch(wrong));
    }

    @Test
    void aSampleOfAllValuesRoundTrips() {
        new Random(3).ints(50_000, 0, 0x1000000).mapToObj(ThreeByteCode::of)
                .forEach(code -> assertEquals(code, ThreeByteCode.of(code.text())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"P0841", "P084164", "P0841-6", "P0841-6G", "P0841-641", "P4841-64"})
    void refusesATextThatIsNotCanonical(String text) {
        assertThrows(IllegalArgumentException.class, () -> ThreeByteCode.of(text));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0x1000000})
    void refusesMoreThanThreeBytes(int value) {
        assertThrows(IllegalArgumentException.class, () -> ThreeByteCode.of(value));
    }

    @Test
    void refusesAFailureTypeOfMoreThanAByte() {
        assertThrows(IllegalArgumentException.class, () -> new ThreeByteCode(new TwoByteCode(1), 0x100));
    }
}
