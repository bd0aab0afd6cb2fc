// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole range of SAE J1939-73 codes; the layout is packed here a second time, as Open-SAE-J1939 does it. */
class SpnFmiRangeTest {
    private static final int SPNS = 1 << 19;
    /** A prime, so that the samples go through all bytes and all FMIs. */
    private static final int STRIDE = 521;

    /** 127 is 'not available', 126 the highest count. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 126, 127})
    void fourBytesGiveTheNumbersThatWerePacked(int count) {
        long wrong = 0;
        for (int i = 0; i < SPNS * 32; i++) {
            int spn = i >> 5;
            int fmi = i & 31;
            var code = SpnFmi.ofBytes(packed(spn, fmi, count));
            wrong += code.spn() == spn && code.fmi() == fmi && code.count() == count ? 0 : 1;
        }
        assertEquals(0, wrong);
    }

    @Test
    void bytesKeyAndBytesAgree() {
        for (int i = 0; i < SPNS * 32; i += STRIDE) {
            var code = new SpnFmi(i >> 5, i & 31, i % 128);
            var bytes = code.bytes();
            assertEquals(packed(code.spn(), code.fmi(), code.count()), Long.parseLong(bytes.replace(" ", ""), 16));
            var key = CodeReader.read(bytes, CodeScheme.J1939).get(0).key();
            assertEquals(new CodeKey(CodeScheme.J1939, "SPN " + code.spn() + " FMI " + code.fmi()), key);
            // A key has no count, so its own bytes end in 'not available'.
            var withoutCount = bytes.substring(0, 9) + "7F";
            assertTrue(key.writtenForms().contains(withoutCount), withoutCount);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"SPN %d FMI %d", "spn%dfmi%d", "%d/%d", "SPN %d - %d"})
    void textAndKeyAgree(String form) {
        for (int i = 0; i < SPNS * 32; i += 3 * STRIDE) {
            int spn = i >> 5;
            int fmi = i & 31;
            var text = String.format(Locale.ROOT, form, spn, fmi);
            var key = new CodeKey(CodeScheme.J1939, "SPN " + spn + " FMI " + fmi);
            assertEquals(key, CodeReader.read(text, CodeScheme.J1939).get(0).key(), text);
        }
    }

    private static long packed(int spn, int fmi, int count) {
        int third = spn >> 16 << 5 | fmi;
        return (long) (spn & 0xFF) << 24 | (long) (spn >> 8 & 0xFF) << 16 | (long) third << 8 | count;
    }
}
