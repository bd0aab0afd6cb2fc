// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"148.50|148.50", "148,50|148.50", "0|0", "1,234.50|1234.50",
            "1.234,50|1234.50", "12.3456|12.3456", "1\u00A0250|1250"})
    void readsAnAmountAndKeepsItsText(String text, BigDecimal value) {
        assertEquals(new Amount(value, text), Amount.parse(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"-1|is below zero", "1.23456|has more than four decimals",
            "1e3|holds more than digits", "148.50 EUR|holds more than digits", "€ 5|does not start with a number",
            "1,500|can be read in two ways", "''|Nothing is written here", "NaN|does not start with a number",
            "12 50|holds more than digits"})
    void saysWhatIsWrong(String text, String wrong) {
        var problem = assertThrows(IllegalArgumentException.class, () -> Amount.parse(text));
        assertTrue(problem.getMessage().contains(wrong), problem.getMessage());
    }

    @Test
    void readsItsOwnTextBack() {
        var amount = Amount.parse(" 148,50 ");
        assertEquals(amount, Amount.parse(amount.toString()));
    }

    @Test
    void writesAComputedAmountPlainly() {
        assertEquals("1200", Amount.of(new BigDecimal("1.2E3")).toString());
    }

    @Test
    void comparesByValue() {
        assertEquals(0, Amount.parse("1.50").compareTo(Amount.parse("1,5")));
    }
}
