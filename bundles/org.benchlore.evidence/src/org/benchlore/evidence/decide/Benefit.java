// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

/** What renewing buys beside the money. */
public enum Benefit {
    /** If it does not work afterwards, one part less to suspect. */
    ONE_SUSPECT_FEWER("one part less to suspect if it does not work afterwards"),
    /** The unit does not stand a second time. */
    NO_SECOND_STAND("no second time out of service for the same opening"),
    /** New parts run against a new part. */
    NEW_AGAINST_NEW("the new parts do not run against an old one"),
    /** It starts its life anew. */
    LIFE_ANEW("a part that starts its life anew");

    private final String words;

    Benefit(String words) {
        this.words = words;
    }

    /**
     * Returns the benefit in words.
     *
     * @return words
     */
    public String words() {
        return words;
    }
}
