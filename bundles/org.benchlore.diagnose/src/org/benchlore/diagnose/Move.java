// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

/**
 * What one finding, answer or circumstance did to a cause.
 *
 * @param by what did it, in words
 * @param from how likely the cause would be without it
 * @param to how likely it is with it
 */
public record Move(String by, double from, double to) {

    private static final double NOTHING = 1.02;

    /**
     * Tells whether it made the cause likelier.
     *
     * @return false if it made it less likely
     */
    public boolean isUp() {
        return to > from;
    }

    /**
     * Tells whether it is worth a word.
     *
     * @return false if it moved next to nothing
     */
    public boolean isSeen() {
        return Math.max(to, from) / Math.min(to, from) > NOTHING;
    }
}
