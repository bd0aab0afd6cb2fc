// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.model.WeightKind;

/**
 * Something about the work done that makes a cause more or less likely.
 *
 * @param text what it is, in words
 * @param factor what it does to the odds, above 0
 */
public record Circumstance(String text, double factor) {

    /**
     * Returns the circumstances of a candidate: new parts are less suspected and never cleared; what the work disturbed
     * is more suspected; so is an old part that now works with new ones.
     *
     * @param now the case
     * @param candidate a candidate
     * @return none without work
     */
    public static List<Circumstance> of(CaseInHand now, Candidate candidate) {
        var all = new ArrayList<Circumstance>();
        if (now.work().isEmpty()) {
            return all;
        }
        var work = now.work().get();
        var upwards = now.book().upwards(candidate.component());
        var disturbed = work.disturbed().get(upwards.get(0));
        if (work.renewed(upwards)) {
            all.add(new Circumstance("the part is new: renewed by '" + work.work().title() + "'",
                    now.weights().of(WeightKind.NEW_PART)));
        } else if (disturbed != null) {
            all.add(new Circumstance("the work disturbed it: " + disturbed, now.weights().of(WeightKind.DISTURBED)));
        } else if (isOldAmongNew(now, work, candidate)) {
            all.add(new Circumstance("an old part left in a chain with new ones",
                    now.weights().of(WeightKind.OLD_PART_KEPT)));
        }
        return all;
    }

    private static boolean isOldAmongNew(CaseInHand now, WorkDone work, Candidate candidate) {
        return now.failing().filter(function -> now.book().isIn(candidate.component(), function)
                && new Chains(now.book(), now.words()).members(function).stream()
                        .anyMatch(member -> work.renewed(now.book().upwards(member)))).isPresent();
    }
}
