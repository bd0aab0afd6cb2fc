// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TwoByteCodeTest {
    /** Worked out from the bit layout of ISO 15031-6 and SAE J2012: letter, digit 0 to 3, three hex digits. */
    @ParameterizedTest
    @CsvSource({"0133, P0133", "0171, P0171", "0894, P0894", "0A80, P0A80", "2714, P2714", "4035, C0035", "5234, C1234",
            "9318, B1318", "C100, U0100", "C121, U0121", "C401, U0401", "D234, U1234", "FFFF, U3FFF", "0000, P0000"})
    void bytesBecomeTheTextAndBack(String bytes, String text) {
        var code = new TwoByteCode(Integer.parseInt(bytes, 16));
        assertEquals(text, code.text());
        assertEquals(code, TwoByteCode.of(text));
    }

    @Test
    void everyValueRoundTripsAndNoTwoShareAText() {
        var texts = new HashSet<String>();
        IntStream.rangeClosed(0, 0xFFFF).mapToObj(TwoByteCode::new).forEach(code -> {
            assertEquals(code, TwoByteCode.of(code.text()));
            texts.add(code.text());
        });
        assertEquals(0x10000, texts.size());
    }

    @Test
    void theReaderFindsEveryValueFromBytesAndFromText() {
        IntStream.rangeClosed(0, 0xFFFF).mapToObj(TwoByteCode::new).forEach(code -> {
            assertEquals(code.key(), CodeReader.read(code.bytes()).get(0).key());
            assertEquals(code.key(), CodeReader.read(code.text()).get(0).key());
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0x10000})
    void refusesMoreThanTwoBytes(int value) {
        assertThrows(IllegalArgumentException.class, () -> new TwoByteCode(value));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "P084", "P08411", "P4841", "X0841", "p0841", "P08G1"})
    void refusesATextThatIsNotCanonical(String text) {
        assertThrows(IllegalArgumentException.class, () -> TwoByteCode.of(text));
    }

    /** All zeros as padding: from memory. */
    @Test
    void saysThatAllZerosAreNoCode() {
        assertTrue(CodeReader.read("0000").get(0).remark().contains("no code is stored"));
    }
}
