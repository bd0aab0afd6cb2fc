// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormsTest {

    @Test
    void simpleValuesAreReadAsWritten() {
        assertEquals(LocalDate.of(2024, 2, 29), Forms.date("2024-02-29"));
        assertEquals(2019, Forms.year("2019"));
        assertEquals(12, Forms.count("12"));
        assertEquals(new BigDecimal("19.50"), Forms.factor("19.50"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2023-02-29", "29.02.2024", "24-02-29", "0024-02-29", "2024-02-29T00:00", "x"})
    void noDayIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Forms.date(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "19", "1899", "3000", "20x4", "-2019", " 2019"})
    void noYearIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Forms.year(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-1", "1.5", "4l", "1000001", "99999999999", "1e3"})
    void noCountIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Forms.count(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-1", "1,5", ".5", "5.", "1e3", "NaN", "0.1234567"})
    void noFactorIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Forms.factor(text));
    }
}
