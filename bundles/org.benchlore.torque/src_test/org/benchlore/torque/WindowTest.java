// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bounds of what is usual belong to it; common practice, no source. */
class WindowTest {

    @ParameterizedTest
    @CsvSource({"TORQUE, 0.4999, BELOW, false", "TORQUE, 0.5, USUAL, true", "TORQUE, 1, USUAL, true",
        "TORQUE, 1.0001, ABOVE_PROOF, false", "SNUG, 0.0499, BELOW, false", "SNUG, 0.05, USUAL, true",
        "SNUG, 0.6, USUAL, true", "SNUG, 0.6001, HIGH_FOR_SNUG, false", "SNUG, 1, HIGH_FOR_SNUG, false",
        "SNUG, 1.0001, ABOVE_PROOF, false"})
    void placesAShareOfProof(Window window, double share, Place place, boolean held) {
        assertEquals(place, window.place(share));
        assertEquals(held, window.holds(share));
    }

    @Test
    void readingsAreComparedWithTheMiddleByRatio() {
        assertEquals(Math.sqrt(0.5), Window.TORQUE.middle(), 1e-12);
        assertEquals(Math.sqrt(0.03), Window.SNUG.middle(), 1e-12);
    }
}
