// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.benchlore.measure.Quantity;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Measurement;
import org.benchlore.model.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Invented figures; that a limit itself is still permitted is common practice, no source. */
class JudgedTest {

    private static Quantity quantity(String text) {
        return text == null ? null : Quantity.parse(text);
    }

    private static Measurement asked(String nominal, String low, String high, String wear) {
        var asked = BookFactory.eINSTANCE.createMeasurement();
        asked.setNominal(quantity(nominal));
        asked.setLow(quantity(low));
        asked.setHigh(quantity(high));
        asked.setWearLimit(quantity(wear));
        return asked;
    }

    @ParameterizedTest(name = "{4} against {0}, {1} to {2}, wear limit {3}: {5}, {6}")
    @CsvSource(nullValues = "-", textBlock = """
            -,      3.0 mm, 3.4 mm, -,      3.2 mm,  PASS,         within limits
            -,      3.0 mm, 3.4 mm, -,      3.0 mm,  PASS,         just within limits: on the limit
            -,      3.0 mm, 3.4 mm, -,      3.40 mm, PASS,         just within limits: on the limit
            -,      3.0 mm, 3.4 mm, -,      2.99 mm, FAIL,         below 3.0 mm
            -,      3.0 mm, 3.4 mm, -,      0.35 cm, FAIL,         above 3.4 mm
            -,      -,      12 bar, -,      1.1 MPa, PASS,         within limits
            -,      -,      12 bar, -,      1.3 MPa, FAIL,         above 12 bar
            8.2 mm, -,      -,      9.5 mm, 9.5 mm,  PASS,         within limits
            8.2 mm, -,      -,      9.5 mm, 9.6 mm,  FAIL,         beyond the wear limit of 9.5 mm: renew
            4 mm,   -,      -,      2 mm,   1.9 mm,  FAIL,         beyond the wear limit of 2 mm: renew
            -,      3.8 mm, 4.2 mm, 2 mm,   3 mm,    NOT_RECORDED, 'below 3.8 mm, not yet beyond the wear limit of 2 mm: a person decides'
            -,      3.8 mm, 4.2 mm, 2 mm,   4.3 mm,  FAIL,         above 4.2 mm
            -,      -,      -,      9.5 mm, 9.6 mm,  NOT_RECORDED, 'renew beyond 9.5 mm: on which side is not written down, a person decides'
            8 mm,   -,      -,      -,      7 mm,    NOT_RECORDED, no limits are written down: a person decides
            """)
    void aValueIsJudgedByTheLimitsInAnyUnit(String nominal, String low, String high, String wear, String value,
            Verdict verdict, String words) {
        assertEquals(new Judged(verdict, words), Judged.of(asked(nominal, low, high, wear), Quantity.parse(value)));
    }

    @Test
    void aValueOfSomethingElseIsRefusedWithTheRightUnit() {
        var limits = asked(null, "3.0 mm", null, null);
        var refused = assertThrows(IllegalArgumentException.class, () -> Judged.of(limits, Quantity.parse("3 bar")));
        assertTrue(refused.getMessage().endsWith("write it in mm"), refused.getMessage());
    }
}
