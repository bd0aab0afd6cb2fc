// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CodeFinderTest {
    /** Ways of writing in notes: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "teach-in stops w/ P17A4-64, spn 520192/31|P17A4-64, SPN 520192 FMI 31",
            "P0841 and P0842, later p0841 again|P0841, P0842",
            "P0841 12 times this week|P0841", "range P0841-P0843|P0841, P0843", "P084164!|P0841-64",
            "c0035/u0100:87 stored|C0035, U0100-87", "P0841–64 (old)|P0841-64",
            "SPN 3364 FMI 18 active|SPN 3364 FMI 18", "spn3364fmi18|SPN 3364 FMI 18",
            "SPN 3364 18 times|SPN 3364", "FMI 18, SPN 3364|SPN 3364 FMI 18", "SPN 100 and more|SPN 100",
            "520192/31 came back|SPN 520192 FMI 31", "code 4C17 on the panel|4C17", "dtc: 0841|0841",
            "codes 0x4c17 0x4C18|4C17, 4C18"})
    void picksCodesOutOfRunningText(String text, String codes) {
        assertEquals(codes, CodeFinder.findIn(text).stream().map(CodeKey::text).collect(Collectors.joining(", ")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "stops in second gear", "45 N·m then 90 °", "1/2 in drive", "done 2019/12",
        "part XP0841", "bolt M8 x 25", "SPN 524288 FMI 1", "SPN 3364 FMI 32", "P084", "P4841", "12.5 bar", "error",
        "fault 3 times", "PO12345", "0xZZ", "code list", "dtc dead"})
    void findsNothingWhereThereIsNoCode(String text) {
        assertEquals(List.of(), CodeFinder.findIn(text));
    }

    @Test
    void givesTheSchemeWithTheCode() {
        assertEquals(List.of(new CodeKey(CodeScheme.J2012, "P0841"), new CodeKey(CodeScheme.ISO14229, "P0841-64"),
                new CodeKey(CodeScheme.J1939, "SPN 100 FMI 1"), new CodeKey(CodeScheme.MAKER, "4C17")),
                CodeReader.findIn("P0841 P0841-64 SPN 100/1 0x4C17"));
    }

    @Test
    void findsNothingInNoText() {
        assertEquals(List.of(), CodeReader.findIn(null));
    }
}
