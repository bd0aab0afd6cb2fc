// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/** Where a stated torque lies for a thread and a class. */
public enum Place {
    /** Less than is usual. */
    BELOW("below the usual"),
    /** As usual. */
    USUAL("usual"),
    /** More than is usual before an angle. */
    HIGH_FOR_SNUG("high for a snug torque before an angle"),
    /** The bolt is loaded above its proof load. */
    ABOVE_PROOF("above proof");

    private final String words;

    Place(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
