// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpnFmiTest {
    /**
     * The byte layout is that of SAE J1939-73 as the published library Open-SAE-J1939 packs it; the first row is the
     * standard's own example, from memory; the others are worked out from the layout.
     */
    @ParameterizedTest
    @CsvSource({"1208, 3, 10, B804030A", "100, 1, 1, 64000101", "110, 0, 5, 6E000005", "190, 2, 126, BE00027E",
            "84, 2, 7, 54000207", "639, 9, 4, 7F020904", "3364, 18, 2, 240D1202", "5246, 15, 1, 7E140F01",
            "520192, 31, 127, 00F0FF7F", "524287, 31, 127, FFFFFF7F"})
    void fourBytesAndNumbersAgree(int spn, int fmi, int count, String bytes) {
        var code = new SpnFmi(spn, fmi, count);
        assertEquals(bytes, code.bytes().replace(" ", ""));
        assertEquals(code, SpnFmi.ofBytes(Long.parseLong(bytes, 16)));
        assertEquals(new CodeKey(CodeScheme.J1939, code.text()), CodeReader.read(bytes).get(0).key());
    }

    @Test
    void aSampleOfTheWholeRangeRoundTripsThroughBytesAndText() {
        var random = new Random(1939);
        for (int i = 0; i < 20_000; i++) {
            var code = new SpnFmi(random.nextInt(SpnFmi.HIGHEST_SPN + 1), random.nextInt(32), random.nextInt(128));
            assertEquals(code, SpnFmi.ofBytes(Long.parseLong(code.bytes().replace(" ", ""), 16)));
            var key = new CodeKey(CodeScheme.J1939, code.text());
            assertEquals(key, CodeReader.read(code.text()).get(0).key());
            assertEquals(key, CodeReader.read(code.bytes()).get(0).key());
        }
    }

    @ParameterizedTest
    @CsvSource({"-1, 0, 0", "524288, 0, 0", "0, -1, 0", "0, 32, 0", "0, 0, -1", "0, 0, 128"})
    void refusesWhatDoesNotFitTheBits(int spn, int fmi, int count) {
        assertThrows(IllegalArgumentException.class, () -> new SpnFmi(spn, fmi, count));
    }

    @Test
    void tellsTheCountInTheRemark() {
        assertTrue(CodeReader.read("B8 04 03 0A").get(0).remark().contains("Counted 10 times."));
    }

    /** From memory of SAE J1939-73: the byte orders; 1208 is 00 97 0 with the highest bits first. */
    @Test
    void showsEveryOrderWhereTheConversionBitIsSet() {
        var keys = CodeReader.read("00 97 03 8A", CodeScheme.J1939).stream().map(r -> r.key().text())
                .collect(Collectors.toList());
        assertEquals("[SPN 38656 FMI 3, SPN 1208 FMI 3, SPN 309248 FMI 3]", keys.toString());
    }
}
