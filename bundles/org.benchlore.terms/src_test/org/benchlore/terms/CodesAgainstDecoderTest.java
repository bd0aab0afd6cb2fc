// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.pires.obd.commands.control.TroubleCodesCommand;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * All two-byte values against a decoder of other people's: OBD Java API 1.0 by Paulo Pires (Apache License 2.0; Maven
 * Central, com.github.pires:obd-java-api). It is fed the answer to a request for stored codes, '43' and then two bytes
 * for each code.
 */
class CodesAgainstDecoderTest {

    /** The value 0000 is left to the next test: the other decoder takes it for the end of the list. */
    @Test
    void everyValueHasTheTextThatTheOtherDecoderGives() throws Exception {
        int compared = 0;
        for (int first = 0; first <= 0xFF; first++) {
            var values = values(first);
            var theirs = decoded(values);
            assertEquals(values.size(), theirs.size());
            for (int i = 0; i < values.size(); i++) {
                assertEquals(theirs.get(i), new TwoByteCode(values.get(i)).text());
                assertEquals(values.get(i), TwoByteCode.of(theirs.get(i)).value());
                compared++;
            }
        }
        assertEquals(0xFFFF, compared);
    }

    /** Both take 0000 for an empty place: the other decoder stops there, ours says so. */
    @Test
    void allZerosAreNoCodeForEither() throws Exception {
        assertEquals(List.of("P0133"), decoded(List.of(0x0133, 0x0000, 0x0171)));
        assertTrue(CodeReader.read("00 00").get(0).remark().contains("no code is stored"));
    }

    private static List<Integer> values(int first) {
        var values = new ArrayList<Integer>();
        for (int second = first == 0 ? 1 : 0; second <= 0xFF; second++) {
            values.add(first << 8 | second);
        }
        return values;
    }

    private static List<String> decoded(List<Integer> values) throws IOException, InterruptedException {
        var answer = new StringBuilder("43");
        var hex = HexFormat.of().withUpperCase();
        values.forEach(value -> answer.append(hex.toHexDigits((short) (int) value)));
        var command = new TroubleCodesCommand();
        var stream = new ByteArrayInputStream((answer + ">").getBytes(StandardCharsets.US_ASCII));
        command.run(stream, OutputStream.nullOutputStream());
        return command.getCalculatedResult().lines().toList();
    }
}
