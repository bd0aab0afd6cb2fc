// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.Optional;

import org.benchlore.model.Address;

/**
 * Something that a note's text speaks of and that one key press puts into a field.
 *
 * @param what which field it would go into
 * @param text what it is called, or the word itself
 * @param target the element meant, empty for a symptom and for a code that the library does not hold
 */
public record Proposal(What what, String text, Optional<Address> target) {

    /** Which field of a note a proposal goes into. */
    public enum What {
        /** A type of machine of the library. */
        MACHINE,
        /** A job record of the library. */
        JOB,
        /** The procedure during which it was learned. */
        PROCEDURE,
        /** One of the library's units. */
        UNIT,
        /** One of the library's fault codes. */
        CODE,
        /** A fault code that the library does not hold, in its canonical form. */
        CODE_AS_WRITTEN,
        /** A component of the machine. */
        COMPONENT,
        /** A way in which a component fails. */
        CAUSE,
        /** A symptom that other elements name. */
        SYMPTOM
    }
}
