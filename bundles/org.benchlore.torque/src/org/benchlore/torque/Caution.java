// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.List;
import java.util.stream.Stream;

/** The standing words of every result that can hurt someone if it is wrong. */
public final class Caution {

    /** Stands under every result. */
    public static final String CHECK = "Check against the manufacturer's data for this machine; "
            + "local rules and a licensed person decide.";

    /** What a torque, a thread and a class say nothing about. */
    private static final List<String> NOT_JUDGED = List.of(
            "the female thread (aluminium, cast iron, a worn thread) and an insert in it",
            "how many turns engage",
            "a soft joint: gasket, spring, paint, long stack",
            "washers, flange heads and what lies under the head",
            "whether the bolt may be used again, and what locks it");

    private Caution() {
    }

    /**
     * What a calculation for a thread and a class leaves open, one phrase each.
     *
     * @param leftHanded whether the thread is cut left-handed
     */
    public static List<String> notJudged(boolean leftHanded) {
        var turning = leftHanded ? "the direction: marked left-hand, so it tightens anticlockwise"
                : "whether the thread is left-hand";
        return Stream.concat(NOT_JUDGED.stream(), Stream.of(turning)).toList();
    }
}
