// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.Optional;

import org.benchlore.model.Address;

/**
 * What speaks for a cause.
 *
 * @param kind what sort it is
 * @param address where it stands
 * @param title what it is called
 * @param says what it adds, such as 'seen in 3 of about 40 since 2021'
 * @param finding id of the finding it ties to the cause, empty where it only counts
 * @param weight what it counts for, 0 to 1
 */
public record Witness(Kind kind, Address address, String title, String says, Optional<String> finding, double weight) {

    /** What speaks, the shop's own experience first. */
    public enum Kind {
        /** A field note. */
        NOTE,
        /** A job record. */
        JOB,
        /** A document of the maker: it knows of it, and never how often. */
        DOCUMENT,
        /** The cause itself, as the book holds it. */
        BOOK,
        /** The fault code, which names the component. */
        CODE
    }
}
