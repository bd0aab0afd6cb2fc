// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

/** Why something is thought of at all. What has no reason is not shown. */
public enum Reason {
    /** A field note says so. */
    NOTE("a field note"),
    /** Our own jobs say so. */
    JOBS("our own jobs"),
    /** Its life data say so. */
    LIFE("its life data"),
    /** Its failure ruins something else. */
    RUINS("its failure ruins other parts"),
    /** The opening was looked at and it was found worn. */
    SEEN_WORN("it was seen to be worn"),
    /** Its failure can hurt somebody. */
    CAN_HURT("its failure can hurt somebody");

    private final String words;

    Reason(String words) {
        this.words = words;
    }

    /**
     * Returns the reason in words.
     *
     * @return words that go after 'because of'
     */
    public String words() {
        return words;
    }
}
