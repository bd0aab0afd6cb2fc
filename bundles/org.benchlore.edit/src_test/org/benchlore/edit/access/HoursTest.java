// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hours in parts and the whole job; the sums are plain arithmetic. */
class HoursTest {

    private static Quantity time(String text) {
        return Quantity.parse(text, Dimension.TIME);
    }

    private static Hours hours(String strip, String work, String refit) {
        return new Hours(Optional.ofNullable(strip).map(HoursTest::time), Optional.ofNullable(work).map(HoursTest::time),
                Optional.ofNullable(refit).map(HoursTest::time));
    }

    @ParameterizedTest
    @CsvSource({"6.5 h, 1.5 h, 90 min, 3.5 h", "20 min, 5 min, 5 min, 10 min", "1 h, 20 min, 20 min, 20 min",
            "6 h, 1 h, 2 h, 3 h"})
    void whatIsLeftIsForTheWork(String whole, String strip, String refit, String left) {
        assertEquals(left, hours(strip, null, refit).left(time(whole)).orElseThrow().toString());
    }

    @Test
    void nothingIsLeftWhenStripAndRefitTakeItAll() {
        assertEquals(Optional.empty(), hours("1 h", null, "1 h").left(time("2 h")));
    }

    @Test
    void nothingCanBeSaidWhileOneIsMissing() {
        assertEquals(Optional.empty(), hours("1 h", null, null).left(time("2 h")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.5 h | 3.5 h | 1.5 h | Together 6.5 h, as the whole job was written down",
        "1.5 h | 4 h | 1.5 h | Together 7 h: 0.5 h more than the 6.5 h of the whole job",
        "1 h | 4 h | 1 h | Together 6 h: 0.5 h less than the 6.5 h of the whole job"})
    void theSumIsHeldAgainstTheWholeJob(String strip, String work, String refit, String sentence) {
        assertEquals(sentence, hours(strip, work, refit).against(time("6.5 h")));
    }
}
