// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.List;

/** Failure mode identifiers of SAE J1939-73 and ISO 11783-12, Annex E, in our own words. */
public final class FailureMode {
    private static final int CONDITION_EXISTS = 31;
    private static final List<String> WORDS = List.of(
            "value far above its normal range",
            "value far below its normal range",
            "value jumps about or cannot be right",
            "voltage too high, or shorted to a higher one",
            "voltage too low, or shorted to a lower one",
            "current too low, or circuit open",
            "current too high, or circuit grounded",
            "mechanical part does not respond or is out of adjustment",
            "frequency, pulse width or period out of order",
            "message comes too rarely or too often",
            "value changes too fast or too slowly",
            "cause not known",
            "device or part is faulty in itself",
            "out of calibration",
            "special instructions: look in the maker's papers",
            "value slightly above its normal range",
            "value clearly above its normal range",
            "value slightly below its normal range",
            "value clearly below its normal range",
            "data received from the network is marked as faulty",
            "value has drifted high",
            "value has drifted low");

    private FailureMode() {
    }

    /**
     * What an FMI says, for 0 to 31.
     *
     * @throws IllegalArgumentException outside that range
     */
    public static String words(int fmi) {
        if (fmi < 0 || fmi > SpnFmi.HIGHEST_FMI) {
            throw new IllegalArgumentException("An FMI goes from 0 to 31, for example FMI 31.");
        }
        if (fmi == CONDITION_EXISTS) {
            return "the condition that the SPN names is there";
        }
        return fmi < WORDS.size() ? WORDS.get(fmi) : "reserved, no meaning laid down";
    }
}
