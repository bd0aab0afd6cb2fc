// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.ladder;

import java.util.Optional;

import org.benchlore.model.Address;

/**
 * One thing to look at.
 *
 * @param state how it stands by the job's own record
 * @param text what it is
 * @param detail what the record or the book says of it, or empty
 * @param address where it stands in the library
 */
public record Item(State state, String text, String detail, Optional<Address> address) {

    /** How a thing on the ladder stands. */
    public enum State {
        /** Not looked at yet, or nothing recorded. */
        OPEN,
        /** Looked at and found in order. */
        GOOD,
        /** Looked at and found wrong. */
        BAD
    }
}
