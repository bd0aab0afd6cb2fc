// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.List;

/**
 * What is to be said of a stated torque.
 *
 * @param judged the torque that was judged: the stated one, or the snug one before an angle
 * @param snug whether it is followed by an angle
 * @param place where it lies with the friction to reckon with
 * @param slips readings of the same digits that would be usual, the likeliest first; empty where the torque is usual
 * @param load what it does with the friction to reckon with
 * @param slippery what it does with the least friction
 * @param rough what it does with the most friction
 * @param usualFrom where the usual begins
 * @param usualTo where the usual ends: proof, or the end of what is usual before an angle
 * @param reasons why, one sentence each
 * @param assumptions what was taken for granted, one phrase each
 * @param notJudged what was left out, one phrase each
 */
public record Verdict(StatedTorque judged, boolean snug, Place place, List<Slip> slips, Load load, Load slippery,
        Load rough, Calculated usualFrom, Calculated usualTo, List<String> reasons, List<String> assumptions,
        List<String> notJudged) {

    /** In words: the place, or that it looks off by a unit's factor. */
    public String words() {
        return isSlip() ? place.words() + ", and it looks off by a unit's factor" : place.words();
    }

    /** Whether it is not usual and another reading of its digits would be. */
    public boolean isSlip() {
        return !slips.isEmpty();
    }

    /** Whether nothing speaks against it with the friction to reckon with. */
    public boolean isUsual() {
        return place == Place.USUAL;
    }
}
