// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.List;
import java.util.stream.IntStream;

/** The status byte that ISO 14229-1 stores with a code: eight yes-or-no bits, in our own words. */
public record StatusByte(int value) {
    private static final List<String> WORDS = List.of(
            "fails now",
            "failed in this operating cycle",
            "pending: failed in this or the last cycle",
            "confirmed",
            "not yet tested since codes were cleared",
            "failed since codes were cleared",
            "not yet tested in this operating cycle",
            "asks for the warning lamp");

    public StatusByte {
        if (value < 0 || value > 0xFF) {
            throw new IllegalArgumentException("A status byte goes from 0 to FF hex, for example 2F.");
        }
    }

    /** Whether bit 0 to 7 is set. */
    public boolean has(int bit) {
        return (value >> bit & 1) != 0;
    }

    /** The meanings of the bits that are set, lowest bit first; empty for zero. */
    public List<String> words() {
        return IntStream.range(0, WORDS.size()).filter(this::has).mapToObj(WORDS::get).toList();
    }

    /** As {@code Status 09: fails now; confirmed.} */
    public String sentence() {
        var digits = Hex.digits(value, 2);
        return "Status " + digits + ": " + (value == 0 ? "tested and good" : String.join("; ", words())) + ".";
    }
}
