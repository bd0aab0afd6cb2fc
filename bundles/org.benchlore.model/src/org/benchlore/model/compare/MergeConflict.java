// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

/**
 * A question that a merge cannot answer by itself: both sides changed the same thing differently.
 *
 * @param id names the question among those of its merge; the same whenever the same three versions are merged
 * @param what what kind of question it is
 * @param place where it stands, in plain words
 * @param base what was there before, in words
 * @param mine what this side made of it, in words
 * @param theirs what the other side made of it, in words
 */
public record MergeConflict(String id, What what, String place, String base, String mine, String theirs) {

    /** What kind of question a conflict is. */
    public enum What {
        /** Both changed one field. */
        VALUE,
        /** One removed what the other changed or referred to. */
        REMOVED_OR_CHANGED,
        /** Both moved one element, or put two into a place for one. */
        PLACE,
        /** Both put one list into another order. */
        ORDER
    }
}
