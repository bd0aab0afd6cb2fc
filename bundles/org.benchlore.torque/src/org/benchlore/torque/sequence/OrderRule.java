// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

/** Where the order of a sequence comes from. */
public enum OrderRule {
    /** The cross pattern of ASME PCC-1, from memory. */
    PUBLISHED("cross pattern as ASME PCC-1 lists it (from memory)"),
    /** The rule stated here for circles that the list does not have. */
    FARTHEST_NEXT("rule of this program: next the one farthest from all that are tightened, of equals the farthest from "
            + "the last, so that opposite ones follow each other"),
    /** From the middle outwards. */
    INSIDE_OUT("from the middle outwards, changing sides (common practice, no source)"),
    /** An order that somebody gave. */
    OWN("order as given");

    private final String words;

    OrderRule(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
