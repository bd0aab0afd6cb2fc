// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole tables of the standards, where the other tests of codes take single rows. */
class CodeReferenceTest {

    /** Bits 0 to 7 as ISO 14229-1 names them; the words are ours. */
    @ParameterizedTest
    @CsvSource({"0, fails now", "1, failed in this operating cycle", "2, pending", "3, confirmed",
            "4, not yet tested since codes were cleared", "5, failed since codes were cleared",
            "6, not yet tested in this operating cycle", "7, warning lamp"})
    void everyStatusBitHasTheMeaningOfTheStandard(int bit, String part) {
        var words = new StatusByte(1 << bit).words();
        assertEquals(1, words.size());
        assertTrue(words.get(0).contains(part), words.toString());
    }

    /** ISO 11783-12 Annex E as AgIsoStack++ carries it (22 to 30 reserved: from memory); words are ours. */
    @Test
    void everyFmiHasTheMeaningOfTheStandard() {
        var parts = List.of("far above", "far below", "jumps about", "voltage too high", "voltage too low",
                "current too low", "current too high", "mechanical", "frequency", "too rarely or too often",
                "changes too fast", "cause not known", "faulty in itself", "out of calibration", "special instructions",
                "slightly above", "clearly above", "slightly below", "clearly below", "network", "drifted high",
                "drifted low");
        for (int fmi = 0; fmi <= SpnFmi.HIGHEST_FMI; fmi++) {
            var part = fmi == 31 ? "is there" : fmi < parts.size() ? parts.get(fmi) : "reserved";
            assertTrue(FailureMode.words(fmi).contains(part), fmi + ": " + FailureMode.words(fmi));
        }
    }

    /** The failure types seen in the header of published engine control firmware, and no others. */
    @Test
    void exactlyTheFailureTypesSeenInSourceTextAreWellEvidenced() {
        var seen = "00 01 11 12 13 14 15 16 17 18 19 23 24 29 44 45 46 47 51 55 56 64 65 67 71 82 86 87 88 8F 96";
        var ours = IntStream.rangeClosed(0, 0xFF).mapToObj(FailureType::find).flatMap(type -> type.stream())
                .filter(FailureType::wellEvidenced).map(type -> Hex.digits(type.code(), 2))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(seen, String.join(" ", ours));
    }

    /**
     * The words of a failure type agree with the meaning that the sources give; 01 to 09, 1A and up only seen in lists
     * without a named source, but for those of the test above.
     */
    @ParameterizedTest
    @CsvSource({"00, no failure type", "01, general electrical", "02, general signal", "03, frequency or pulse width",
            "04, control unit", "05, programming", "06, calculation", "07, mechanical", "08, bus", "09, component",
            "11, to ground", "12, to battery", "13, open", "14, ground or open", "15, battery or open",
            "16, voltage too low", "17, voltage too high", "18, current too low", "19, current too high",
            "1A, resistance too low", "1B, resistance too high", "1F, comes and goes", "21, too small", "22, too large",
            "23, stuck low", "24, stuck high", "28, offset", "29, not valid", "2F, jumps about", "31, no signal",
            "41, checksum", "42, memory", "44, data memory", "45, program memory", "46, calibration memory",
            "47, watchdog", "49, electronics", "4B, too hot", "51, not programmed", "54, calibration missing",
            "55, not configured", "56, configuration", "64, plausible", "65, too few", "66, too many",
            "67, after an event", "71, stuck", "72, open", "73, closed", "74, slips", "77, commanded position", "78, alignment", "7A, leak",
            "7B, fluid low", "82, counter", "86, not valid", "87, missing", "88, off", "8F, jumps about",
            "92, performance", "93, not work", "95, together wrongly", "96, inside", "97, blocked", "98, too hot"})
    void failureTypesSayWhatTheSourcesSay(String hex, String part) {
        var type = FailureType.find(Integer.parseInt(hex, 16)).orElseThrow();
        assertTrue(type.words().contains(part), type.words());
    }

    /**
     * Who defines which range of all 65,536 codes: SAE J2012 and ISO 15031-6, from memory. P0, P2, P34 to P3F, B0, C0
     * and U0 are the standard's; P1, P30 to P33, B1, B2, C1, C2, U1 and U2 the makers'; B3, C3 and U3 in reserve.
     */
    @Test
    void everyCodeHasTheDefinerOfItsRange() {
        IntStream.rangeClosed(0, 0xFFFF).mapToObj(TwoByteCode::new).forEach(code -> {
            var text = code.text();
            var expected = text.matches("P0...|P2...|P3[4-9A-F]..|[BCU]0...") ? CodeAuthority.STANDARD
                    : text.matches("P1...|P3[0-3]..|[BCU][12]...") ? CodeAuthority.MAKER : CodeAuthority.RESERVED;
            assertEquals(expected, CodeAuthority.of(code.key()), text);
            assertTrue(code.value() == 0 || code.remark().endsWith(expected.sentence()), text);
        });
    }

    /** The third character of P0 codes: SAE J2012, from memory. */
    @ParameterizedTest
    @CsvSource({"P0000, additional emission", "P0100, metering", "P0200, injection", "P0300, ignition", "P0400, emission",
            "P0500, idle", "P0600, outputs", "P0700, transmission", "P0800, transmission", "P0900, transmission",
            "P0A00, hybrid"})
    void theThirdCharacterOfAPCodeNamesTheArea(String code, String part) {
        assertTrue(CodeArea.words(code).contains(part), CodeArea.words(code));
    }

    /** Common codes for gearbox, brakes and network, as a published engine control header and other lists have them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "transmission|P0700 P0705 P0710 P0715 P0717 P0720 P0722 P0730 P0731 P0732 P0733 P0734 P0735 P0736 P0740 P0741"
                    + " P0742 P0743 P0745 P0746 P0748 P0750 P0751 P0753 P0755 P0775 P0780 P0781 P0805 P0806 P0810 P0811"
                    + " P0830 P0833 P0836 P0840 P0841 P0842 P0843 P0867 P0868 P0869 P0882 P0893 P0894 P0897",
            "engine or transmission|P2740 P2783 P2785 P2787 P2789", "chassis|C0035 C0040 C0045 C0050 C0060 C0110",
            "network|U0001 U0073 U0100 U0101 U0102 U0103 U0114 U0121 U0140 U0155 U0401"})
    void commonCodesAreTheStandardsAndInTheirArea(String area, String codes) {
        for (var code : codes.split(" ")) {
            var reading = CodeReader.read(code).get(0);
            assertEquals(new CodeKey(CodeScheme.J2012, code), reading.key());
            assertEquals(CodeAuthority.STANDARD, CodeAuthority.of(reading.key()));
            assertTrue(reading.remark().contains("Area: " + area + "."), reading.remark());
        }
    }

    /** Every three-byte vector of the other tests through the reader: raw, with spaces, and as text. */
    @ParameterizedTest
    @CsvSource({"56789A, C1678-9A", "A5B6C7, B25B6-C7", "FFFFFF, U3FFF-FF", "012345, P0123-45", "074114, P0741-14",
            "50F0FF, C10F0-FF", "E10000, U2100-00", "BFEDCB, B3FED-CB", "000000, P0000-00"})
    void threeBytesAndTextReadAsOneKey(String bytes, String text) {
        var spaced = bytes.replaceAll("..(?=.)", "$0 ");
        for (var form : List.of(bytes, "0x" + bytes, spaced, spaced.replace(' ', '-'), text, text.replace("-", ""))) {
            assertEquals(new CodeKey(CodeScheme.ISO14229, text), CodeReader.read(form).get(0).key(), form);
        }
    }
}
