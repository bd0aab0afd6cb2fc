// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TablesTest {
    /** Bits of ISO 14229-1; 50 hex after clearing is from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "09|Status 09: fails now; confirmed.",
            "50|Status 50: not yet tested since codes were cleared; not yet tested in this operating cycle.",
            "2F|Status 2F: fails now; failed in this operating cycle; pending: failed in this or the last cycle;"
                    + " confirmed; failed since codes were cleared.",
            "89|Status 89: fails now; confirmed; asks for the warning lamp.", "00|Status 00: tested and good."})
    void tellsTheStatusByteInWords(String hex, String sentence) {
        assertEquals(sentence, new StatusByte(Integer.parseInt(hex, 16)).sentence());
    }

    @Test
    void everyStatusBitHasItsOwnWords() {
        var words = IntStream.range(0, 8).mapToObj(bit -> new StatusByte(1 << bit).words()).distinct().toList();
        assertEquals(8, words.size());
    }

    @Test
    void knowsWhichStatusBitsAreSet() {
        assertEquals(List.of(true, false), List.of(new StatusByte(0x08).has(3), new StatusByte(0x08).has(2)));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 256})
    void refusesAStatusOfMoreThanAByte(int value) {
        assertThrows(IllegalArgumentException.class, () -> new StatusByte(value));
    }

    /** FMI meanings: ISO 11783-12 Annex E as the published library AgIsoStack++ carries them; words are ours. */
    @ParameterizedTest
    @CsvSource({"0, far above", "1, far below", "3, voltage too high", "4, voltage too low", "5, current too low",
            "6, current too high", "7, mechanical", "8, frequency", "11, not known", "13, calibration",
            "15, slightly above", "16, clearly above", "17, slightly below", "18, clearly below", "19, network",
            "20, drifted high", "21, drifted low", "22, reserved", "30, reserved", "31, is there"})
    void tellsTheFmiInWords(int fmi, String part) {
        assertTrue(FailureMode.words(fmi).contains(part), FailureMode.words(fmi));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 32})
    void refusesAnFmiOutOfRange(int fmi) {
        assertThrows(IllegalArgumentException.class, () -> FailureMode.words(fmi));
    }

    /** Seen in the header of published engine control firmware; words are ours. */
    @ParameterizedTest
    @CsvSource({"11, ground", "12, battery", "13, open", "16, voltage too low", "17, voltage too high", "29, not valid",
            "64, not plausible", "71, stuck", "87, missing", "88, bus", "96, inside"})
    void knowsWellEvidencedFailureTypes(String hex, String part) {
        var type = FailureType.find(Integer.parseInt(hex, 16)).orElseThrow();
        assertTrue(type.words().contains(part) && type.wellEvidenced(), type.toString());
    }

    /** Seen only in lists without a named source. */
    @ParameterizedTest
    @ValueSource(strings = {"1A", "31", "72", "77", "92", "97"})
    void marksThinlyEvidencedFailureTypes(String hex) {
        assertFalse(FailureType.find(Integer.parseInt(hex, 16)).orElseThrow().wellEvidenced());
        assertTrue(CodeReader.read("P0841-" + hex).get(0).remark().contains("unofficial lists"));
    }

    /** Unofficial lists disagree about these, so none is adopted. */
    @ParameterizedTest
    @ValueSource(strings = {"1C", "1D", "1E", "2A", "2B", "2C", "32", "33", "34", "35", "36", "37", "38", "39"})
    void leavesDisputedFailureTypesOut(String hex) {
        assertEquals(Optional.empty(), FailureType.find(Integer.parseInt(hex, 16)));
    }

    /** Groups by the first hex digit: ISO 14229-1 and SAE J2012-DA, from memory. */
    @ParameterizedTest
    @CsvSource({"1C, electrical", "2A, signal", "32, frequency or pulse width", "7F, mechanical", "9F, component",
            "A0, reserved", "F3, maker's own"})
    void fallsBackToTheGroup(String hex, String group) {
        assertEquals(group, FailureType.category(Integer.parseInt(hex, 16)));
        assertTrue(CodeReader.read("P0841-" + hex).get(0).remark().contains("its group is '" + group + "'"));
    }

    /** Who defines a code: SAE J2012, ISO 15031-6 and SAE J1939, from memory. */
    @ParameterizedTest
    @CsvSource({"P0841, STANDARD", "P1841, MAKER", "P2740, STANDARD", "P3000, MAKER", "P3300, MAKER", "P3400, STANDARD",
            "P3FFF, STANDARD", "B0001, STANDARD", "B1318, MAKER", "B2999, MAKER", "B3FED-CB, RESERVED",
            "C0035, STANDARD", "C1234, MAKER", "U0100, STANDARD", "U2100-00, MAKER", "U3FFF, RESERVED",
            "SPN 520191 FMI 1, STANDARD", "SPN 520192 FMI 31, MAKER", "SPN 524287, MAKER", "E-47, MAKER"})
    void tellsWhoDefinesTheCode(String text, CodeAuthority authority) {
        assertEquals(authority, CodeAuthority.of(CodeReader.read(text).get(0).key()));
    }

    @Test
    void doesNotKnowWhoDefinesAnUnsortedCode() {
        assertEquals(CodeAuthority.NOT_KNOWN, CodeAuthority.of(new CodeKey(CodeScheme.NOT_RECORDED, "P0841")));
    }

    @ParameterizedTest
    @CsvSource({"J2012, ''", "J2012, P", "ISO14229, X", "J1939, ''", "J1939, SPN x FMI 3", "J1939, SPN 99999999 FMI 1"})
    void anUnsoundKeyIsNoErrorAnywhere(CodeScheme scheme, String text) {
        var key = new CodeKey(scheme, text);
        assertEquals(CodeAuthority.NOT_KNOWN, CodeAuthority.of(key));
        assertEquals(List.of(text), key.writtenForms());
        assertEquals(key.baseForm(), key.indexForm().substring(0, key.baseForm().length()));
    }

    /** Third character of P0 codes: SAE J2012, from memory. */
    @ParameterizedTest
    @CsvSource({"P0010, fuel", "P0133, fuel", "P0201, injection", "P0301, ignition", "P0420, emission", "P0505, idle",
            "P0606, control unit", "P0741, transmission", "P0894, transmission", "P0A80, hybrid", "C0035, chassis",
            "B1318, body", "U0100, network", "P2740, engine or transmission"})
    void namesTheArea(String code, String area) {
        assertTrue(CodeArea.words(code).contains(area), CodeArea.words(code));
    }
}
