// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

/**
 * One difference between two versions of an element, in plain words.
 *
 * @param change what kind of difference it is
 * @param place where, such as {@code step 3, fastening drain plug, tightening torque}
 * @param before the value before; for something added {@link Words#NOTHING}
 * @param after the value after; for something removed {@link Words#NOTHING}
 */
public record Difference(Change change, String place, String before, String after) {

    /** What kind of difference it is. */
    public enum Change {
        /** An element or a value came in. */
        ADDED,
        /** An element or a value is gone. */
        REMOVED,
        /** An element stands elsewhere. */
        MOVED,
        /** A value is another one. */
        CHANGED
    }
}
