// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullAndEmptySource;
import org.junit.jupiter.params.provider.ValueSource;

class CodeReaderTest {
    /** Written forms: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '=', value = {
            "P0841=P0841|p0841|P 0841|P-0841|(P0841)|DTC P0841|code: P0841|P0841.|PO841|Ρ0841|Ｐ０８４１",
            "P0841-64=P0841-64|P084164|P0841 64|P0841:64|P0841/64|P0841.64|P0841–64|P0841-0x64|P0841-64h"
                    + "|P0841 FTB 64|P0841-64 [2F]|P0841-64-2F|P0841-64(2f)|P0841, failure type 64",
            "SPN 520192 FMI 31=SPN 520192 FMI 31|spn520192fmi31|SPN520192/31|spn 520192-31|SPN:520192, FMI:31"
                    + "|FMI 31 SPN 520192|SPN 0x7F000 FMI 0x1F|SPN 520192 FMI 31 OC 5|SPN 520192.31|520192/31|520192-31"
                    + "|520192 31|SPN 0520192 FMI 031",
            "SPN 3364=SPN 3364|spn3364|SPN: 3364", "B1318=B1318|b1318", "U0100-87=u0100-87|U010087"})
    void readsEveryWrittenFormOfACode(String canonical, String forms) {
        for (var form : forms.split("\\|")) {
            assertEquals(canonical, CodeReader.read(form).get(0).key().text(), form);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "0841|J2012 P0841, MAKER 0841",
            "08 41|J2012 P0841, MAKER 0841",
            "0x0841|J2012 P0841, MAKER 0841",
            "4C17|J2012 C0C17, MAKER 4C17",
            "4c17h|J2012 C0C17, MAKER 4C17",
            "$4C17|J2012 C0C17, MAKER 4C17",
            "4035|J2012 C0035, MAKER 4035, MAKER 0FC3",
            "19479|MAKER 19479, J2012 C0C17, MAKER 4C17",
            "084164|ISO14229 P0841-64, MAKER 084164",
            "08-41-64|ISO14229 P0841-64, MAKER 084164",
            "0x08 0x41 0x64|ISO14229 P0841-64, MAKER 084164",
            "0841-64|ISO14229 P0841-64, MAKER 084164",
            "4035-18|ISO14229 C0035-18, MAKER 403518, J1939 SPN 4035 FMI 18",
            "B804030A|J1939 SPN 1208 FMI 3, ISO14229 B3804-03, MAKER B804030A",
            "FF FF|J2012 U3FFF, MAKER FFFF",
            "0841642F|J1939 SPN 213256 FMI 4, ISO14229 P0841-64, MAKER 0841642F",
            "520192/31|J1939 SPN 520192 FMI 31, MAKER 520192/31",
            "540004|ISO14229 C1400-04, MAKER 540004, MAKER 083D64",
            "1234567|MAKER 1234567, ISO14229 P12D6-87, MAKER 12D687",
            "C123|J2012 U0123, MAKER C123",
            "C10000|ISO14229 U0100-00, MAKER C10000",
            "4C1|MAKER 4C1", "47|MAKER 47, MAKER 2F", "E-47|MAKER E-47", "E 47|MAKER E47",
            "12.5|J1939 SPN 12 FMI 5, MAKER 12.5"})
    void showsAllReadingsTheLikeliestFirst(String text, String readings) {
        assertEquals(readings, CodeReader.read(text).stream().map(CodeReading::key)
                .map(key -> key.scheme() + " " + key).collect(Collectors.joining(", ")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "P4841|The first digit after P goes from 0 to 3, here it is 4: look at the code again.",
            "P084|P is followed by four digits, here by 3: look at the code again.",
            "P0G41|'G' is not a hex digit (0 to 9, A to F): look at the code again.",
            "SPN 524288 FMI 1|An SPN goes from 0 to 524287, here it is 524288: look at the code again.",
            "SPN 100 FMI 32|An FMI goes from 0 to 31, here it is 32: look at the code again.",
            "SPN|After SPN comes its number and after FMI its number, as in SPN 520192 FMI 31: look at the code again.",
            "08 41 64 2F 09|A code has at most four bytes, here are 10 digits: enter one code at a time.",
            "gearbox|There is no code in this text: write for example P0841-64 or SPN 520192 FMI 31."})
    void saysWhatIsWrong(String text, String sentence) {
        assertEquals(Optional.of(sentence), CodeReader.problem(text));
    }

    @ParameterizedTest
    @CsvSource({"P4841, P4841", "P084, P084", "P0G41, P0G41"})
    void keepsANearMissAsTheMakersOwnAndSaysWhy(String text, String key) {
        var reading = CodeReader.read(text).get(0);
        assertEquals(new CodeKey(CodeScheme.MAKER, key), reading.key());
        assertTrue(reading.remark().endsWith(CodeReader.problem(text).orElseThrow()), reading.remark());
    }

    @ParameterizedTest
    @ValueSource(strings = {"SPN 524288 FMI 1", "SPN 100 FMI 32", "SPN", "FMI 3", "08 41 64 2F 09", "gearbox",
        "face", "45 Nm"})
    void readsNothingWhereThereIsNoCode(String text) {
        assertEquals(List.of(), CodeReader.read(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"P0841-6", "P0841-641", "P0841 low pressure", "P08416"})
    void leavesOutWhatIsNoFailureTypeAndSaysSo(String text) {
        var reading = CodeReader.read(text).get(0);
        assertEquals(new CodeKey(CodeScheme.J2012, "P0841"), reading.key());
        assertTrue(reading.remark().contains("is not a failure type"), reading.remark());
    }

    @ParameterizedTest
    @ValueSource(strings = {"P0841", "P0841-64", "4C17", "SPN 100 FMI 1"})
    void hasNoProblemWithASoundCode(String text) {
        assertEquals(Optional.empty(), CodeReader.problem(text));
    }

    @Test
    void tellsTheStatusByteBehindThreeBytes() {
        var reading = CodeReader.read("08 41 64 09", CodeScheme.ISO14229).get(0);
        assertTrue(reading.remark().endsWith("Status 09: fails now; confirmed."), reading.remark());
    }

    @ParameterizedTest
    @CsvSource({"P0841, MAKER, P0841", "c0035, MAKER, C0035", "0x4c17, MAKER, 4C17", "19479, MAKER, 19479",
            "4c 17, MAKER, 4C17", "0841, J2012, P0841", "084164, ISO14229, P0841-64", "4035-18, J1939, SPN 4035 FMI 18",
            "0841, NOT_RECORDED, P0841"})
    void readsInAKnownScheme(String text, CodeScheme scheme, String key) {
        assertEquals(key, CodeReader.read(text, scheme).get(0).key().text());
    }

    @Test
    void findsNothingInAnotherScheme() {
        assertEquals(List.of(), CodeReader.read("P0841", CodeScheme.J1939));
    }

    @ParameterizedTest
    @CsvSource({"P0841, p0841, p0841", "p 0841, p0841, p0841", "P0841-64, p084164, p0841", "PO841, p0841, p0841",
            "spn 520192/31, spn520192fmi31, spn520192", "SPN 100, spn100, spn100", "4C17, 4c17, 4c17",
            "0x4C17, 4c17, 4c17", "E-47, e47, e47", "C10000, c10000, c10000", "0841, 0841, 0841", "'', '', ''"})
    void makesIndexAndBaseForms(String text, String index, String base) {
        assertEquals(List.of(index, base), List.of(CodeReader.indexForm(text), CodeReader.baseForm(text)));
    }

    @ParameterizedTest
    @CsvSource({"J2012, P0841", "J2012, U3FFF", "ISO14229, P0841-64", "ISO14229, B25B6-C7", "J1939, SPN 1208 FMI 3",
            "J1939, SPN 524287 FMI 31", "J1939, SPN 100", "MAKER, 4C17", "MAKER, 19479", "MAKER, E-47", "MAKER, 0FC3",
            "MAKER, P1", "MAKER, 00C3", "NOT_RECORDED, P0841"})
    void readsItsOwnWrittenFormsBack(CodeScheme scheme, String text) {
        var key = new CodeKey(scheme, text);
        assertEquals(text, key.writtenForms().get(0));
        key.writtenForms().forEach(form -> assertTrue(
                keys(form, scheme).contains(text), form + " gives " + keys(form, scheme)));
    }

    private static List<String> keys(String form, CodeScheme scheme) {
        var readings = List.of(CodeReader.read(form, scheme), CodeReader.read(form));
        return readings.stream().flatMap(List::stream).map(reading -> reading.key().text()).toList();
    }

    @ParameterizedTest
    @NullAndEmptySource
    @ValueSource(strings = {" ", "\u0000", "\uD800", "-", "P", "0x", "$", "()", "\"\"", "SPN SPN", "P0841-64 [", "h"})
    void takesAnyTextWithoutFailing(String text) {
        assertDoesNotThrow(() -> everything(text));
    }

    @Test
    void takesHostileTextsWithoutFailing() {
        var random = new Random(20_000);
        var alphabet = "PCBUpcbuSPNFMIspnfmi0123456789ABCDEFxXhH -–./:,;_#=$()[]'\"OIL"
                + "\\*+?^|{}\u0000\u00A0\n\tßſİΡ\uD83D\uDE00";
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            var text = new StringBuilder();
            random.ints(random.nextInt(24), 0, alphabet.length()).forEach(c -> text.append(alphabet.charAt(c)));
            everything(text.toString());
            read += CodeReader.read(text.toString()).size();
        }
        assertTrue(read > 100, "readings " + read);
    }

    @Test
    void needsTimeInProportionToTheLengthOnly() {
        for (var unit : List.of("SPN ", "P0841-", "0x", "520192/", " ", "FMI 3 SPN", "code ", "9", "A1", "-")) {
            var text = unit.repeat(1_000_000 / unit.length());
            assertTimeout(Duration.ofSeconds(5), () -> everything(text), unit);
        }
    }

    private static void everything(String text) {
        CodeReader.read(text).forEach(reading -> {
            assertTrue(!reading.key().text().isEmpty() && !reading.remark().isEmpty());
            reading.key().writtenForms();
            reading.key().baseForm();
            CodeAuthority.of(reading.key());
        });
        for (var scheme : CodeScheme.values()) {
            CodeReader.read(text, scheme);
        }
        CodeReader.problem(text);
        CodeReader.indexForm(text);
        CodeReader.baseForm(text);
        CodeReader.findIn(text).forEach(CodeKey::baseForm);
    }
}
