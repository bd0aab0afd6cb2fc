// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a technician types or copies from a screen or a letter. Written forms: common practice, no source. */
class CodeFormsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '=', value = {
            "P0741=code P0741.|Code P0741!|DTC P0741?|Codes P0741|Fault P0741:|error P0741|P0741...|P0741…|P0741。|P0741-"
                    + "|P0741*|“P0741”|„P0741“|«P0741»|<P0741>|[P0741]|{P0741}|#P0741|(P0741).|code (P0741)|P07 41"
                    + "|P 07 41|P 0 7 4 1|P٠٧٤१|ｐ０７４１|\uFEFFP0741|\u200BP0741|it says P0741 again|😀P0741",
            "P0741-14=P0741, 14|P0741,14|P0741 (14)|P0741[14]|P0741 FT 14|P0741 type 14|P0741 symptom 14|P07-41-14"
                    + "|P 07 41 14|PO741-I4|P0741‒14|P0741―14|P0741−14|P0741－14|P0741﹣14|P0741\u00AD14|P0741\u200B-14"
                    + "|Ｐ０７４１－１４|07.41.14|07/41/14|#074114|{0x07, 0x41, 0x14}|P0741-14.|P0741-14-|P0741-14 status: 0x2F",
            "SPN 520192 FMI 31=SPN 520.192 FMI 31|SPN 520,192 FMI 31|SPN 520 192 FMI 31|SPN no. 520192 FMI no. 31"
                    + "|SPN 7F000h FMI 1Fh|SPN 520192 FMI 31 x5|SPN 520192 FMI 31 (5)|SPN 520192, FMI 31, CM 0, OC 5"
                    + "|520192/31/5|520192 31 5|520192 / 31|520192–31|520192−31|now SPN 520192 FMI 31|FMI 31, SPN 520192.",
            "U3FFF=FFFF|FF FF", "U3FFF-FF=FFFFFF", "B0841=B 08 41", "C1234=C 12-34"})
    void readsWhatIsTypedOrCopied(String canonical, String forms) {
        for (var form : forms.split("\\|")) {
            var readings = CodeReader.read(form);
            assertEquals(canonical, readings.isEmpty() ? "" : readings.get(0).key().text(), form);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "P0741 14|ISO14229 P0741-14, J2012 P0741", "P0741 (2F)|ISO14229 P0741-2F, J2012 P0741",
            "P0741, 14|ISO14229 P0741-14, J2012 P0741", "P0741-14|ISO14229 P0741-14", "P0741 14 2F|ISO14229 P0741-14",
            "P07-41|J2012 P0741, MAKER P07-41",
            "P0741-14, P0742-15|ISO14229 P0741-14, ISO14229 P0742-15", "P0741/P0742|J2012 P0741, J2012 P0742",
            "520192/31/5|J1939 SPN 520192 FMI 31, MAKER 520192/31/5"})
    void showsAllReadingsOfALooseForm(String text, String readings) {
        assertEquals(readings, CodeReader.read(text).stream().map(CodeReading::key)
                .map(key -> key.scheme() + " " + key).collect(Collectors.joining(", ")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "P07411|What follows, '1', is not a failure type (two hex digits) and is left out.",
            "P0741, P0742|There are 2 codes in this text: enter one code at a time.",
            "see P0741 and P0742|There are 2 codes in this text: enter one code at a time.",
            "POO741|P is followed by four digits, here by 5: look at the code again.",
            "SPN 600000 FMI 3|An SPN goes from 0 to 524287, here it is 600000: look at the code again.",
            "SPN 99999999999999 FMI 3|An SPN goes from 0 to 524287, here it is 99999999999999: look at the code again.",
            "FMI 32|An FMI goes from 0 to 31, here it is 32: look at the code again.",
            "FMI 3|FMI 3 means: voltage too high, or shorted to a higher one. The number of the SPN is missing,"
                    + " as in SPN 520192 FMI 31.",
            "SPN 100 FMI 3 OC 500|A count goes from 0 to 126, here it is 500: it is left out.",
            "520192/32|If these are SPN and FMI: an FMI goes from 0 to 31, here it is 32: look at the code again.",
            "600000-3|If these are SPN and FMI: an SPN goes from 0 to 524287, here it is 600000: look at the code again.",
            "B8 04 03 0|Each byte has two hex digits, here '0' stands alone: look at the code again.",
            "face|Letters alone may be a word: if it is a hex number, write 0x in front, as in 0xFACE.",
            "😀|There is no code in this text: write for example P0841-64 or SPN 520192 FMI 31.",
            "bolts|There is no code in this text: write for example P0841-64 or SPN 520192 FMI 31."})
    void saysWhatIsOddInOneSentence(String text, String sentence) {
        assertEquals(Optional.of(sentence), CodeReader.problem(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"FMI 32", "SPN 600000 FMI 3", "600000 FMI 3", "each", "beach", "ah", "plate 12",
        "clutch 12 mm", "B8 04 03 0", "dead", "😀"})
    void makesNoCodeOfWhatIsNone(String text) {
        assertEquals(List.of(), CodeReader.read(text));
    }

    @Test
    void keepsACodeWhoseCountIsOutOfRange() {
        var reading = CodeReader.read("SPN 100 FMI 3 OC 500").get(0);
        assertEquals(new CodeKey(CodeScheme.J1939, "SPN 100 FMI 3"), reading.key());
        assertTrue(!reading.remark().contains("Counted"), reading.remark());
    }

    /** 127 stands for 'not available': SAE J1939-73. */
    @ParameterizedTest
    @CsvSource({"00F0FF7F, false", "00F0FF7E, true", "00F0FF01, true"})
    void tellsTheCountOnlyWhereItIsAvailable(String bytes, boolean told) {
        assertEquals(told, CodeReader.read(bytes).get(0).remark().contains("Counted"));
    }

    @Test
    void tellsAStatusBehindATwoByteCode() {
        var reading = CodeReader.read("P0741 status 09").get(0);
        assertEquals(new CodeKey(CodeScheme.J2012, "P0741"), reading.key());
        assertTrue(reading.remark().endsWith("Status 09: fails now; confirmed."), reading.remark());
    }

    @Test
    void takesHexLettersAsTheMakersWhereTheSchemeIsKnown() {
        assertEquals(new CodeKey(CodeScheme.MAKER, "DEAD"), CodeReader.read("dead", CodeScheme.MAKER).get(0).key());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "back: Ｐ０７４１－１４|P0741-14", "P0741−14 stored|P0741-14", "SPN 520.192 FMI 31 active|SPN 520192 FMI 31",
            "SPN 0x7F000 FMI 0x1F|SPN 520192 FMI 31", "SPN no. 100 FMI no. 3|SPN 100 FMI 3", "code FFFF|FFFF"})
    void picksTheSameFormsOutOfRunningText(String text, String code) {
        assertEquals(code, CodeReader.findIn(text).stream().map(CodeKey::text).collect(Collectors.joining(", ")));
    }
}
