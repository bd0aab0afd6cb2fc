// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.util.ArrayList;
import java.util.List;

/** Says in words how often something happened: a count where there is little, a rate only where there is enough. */
public final class CountWords {

    /** Under so many cases a rate would claim more than is known (design). */
    private static final int FEWEST = 3;
    private static final double MANY = 0.35;
    private static final int TEN = 10;
    private static final double TWO_DIGITS = 100;
    private static final int MOST = 1000;

    private CountWords() {
    }

    /**
     * Says how often those left in failed.
     *
     * @param findings what is known
     * @return such as '1 of about 70 of ours', 'about 1 in 14 of ours (3 of 41)', 'nothing is recorded'
     */
    public static String of(Findings findings) {
        if (findings.of() == 0) {
            return findings.prior() instanceof Prior.Figure ? oneIn(findings.comeback().chance()) + " by its life data"
                    : "nothing is recorded";
        }
        var about = findings.prior() instanceof Prior.Tally ? "about " : "";
        var count = (findings.failed() == 0 ? "none" : findings.failed()) + " of " + about + findings.of();
        return findings.failed() < FEWEST ? count + " of ours"
                : oneIn(findings.failed() / (double) findings.of()) + " of ours (" + count + ")";
    }

    /**
     * Says a chance.
     *
     * @param chance 0 to 1
     * @return such as 'about 1 in 70', 'about 4 in 10'
     */
    public static String oneIn(double chance) {
        if (chance * MOST < 1) {
            return "less than 1 in " + MOST;
        }
        if (chance > MANY) {
            long tenths = Math.round(chance * TEN);
            return tenths >= TEN ? "nearly always" : "about " + tenths + " in 10";
        }
        long exact = Math.round(1 / chance);
        return "about 1 in " + (exact < TWO_DIGITS ? exact : Math.round(exact / (double) TEN) * TEN);
    }

    /**
     * Says what was passed over in counting and why.
     *
     * @param counts what was counted
     * @return one sentence each, none if nothing was passed over
     */
    public static List<String> passedOver(Counts counts) {
        var said = new ArrayList<String>();
        add(said, counts.notFollowed(), "not followed long enough yet");
        add(said, counts.inTally(), "that are the cases the note counts");
        add(said, counts.otherNumber(), "with another part number");
        add(said, counts.numberUnknown(), "where nobody wrote the part number");
        return List.copyOf(said);
    }

    private static void add(List<String> said, int number, String why) {
        if (number > 0) {
            said.add(number + (number == 1 ? " job " : " jobs ") + why);
        }
    }
}
