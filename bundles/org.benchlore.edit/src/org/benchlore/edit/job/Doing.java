// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;

/**
 * Who did a line of the card, how long it took, and what it put in.
 *
 * @param minutes time as typed, a bare number being minutes; empty if nobody looked at the clock
 * @param people how many people as typed; may be empty
 * @param by who did it
 * @param renewed components renewed by it
 * @param fitted parts fitted by it
 */
public record Doing(String minutes, String people, Optional<Address> by, List<Address> renewed, List<Address> fitted) {

    private static final String BARE = "[0-9]+([.,][0-9]+)?";

    public Doing {
        minutes = minutes.strip().matches(BARE) ? minutes.strip() + " min" : minutes.strip();
        people = people.strip();
        renewed = List.copyOf(renewed);
        fitted = List.copyOf(fitted);
    }

    /**
     * Only time and people.
     *
     * @param minutes time as typed
     * @param people how many as typed
     * @param by who did it
     * @return nothing renewed and nothing fitted
     */
    public static Doing of(String minutes, String people, Optional<Address> by) {
        return new Doing(minutes, people, by, List.of(), List.of());
    }
}
