// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import org.benchlore.model.Address;

/** What was said before any job was counted. */
public sealed interface Prior {

    /**
     * A note's tally.
     *
     * @param note the note
     * @param count how often it was seen, without what job records speak for
     * @param ofAbout in about how many jobs, at least 1
     */
    record Tally(Address note, int count, int ofAbout) implements Prior {

        /** Of none seen half a one is taken, since it was not seen yet is not that it never is. */
        private static final double HALF = 0.5;

        @Override
        public Estimate estimate(CountingRules rules) {
            double chance = count == 0 ? HALF / (ofAbout + 1.0) : Math.min(1, count / (double) ofAbout);
            return Estimate.of(chance, Math.min(ofAbout, rules.priorWorth()));
        }
    }

    /**
     * A figure from life data or from the shop's rules.
     *
     * @param chance the figure, 0 to 1
     * @param fromLifeData whether it is from life data
     */
    record Figure(double chance, boolean fromLifeData) implements Prior {

        @Override
        public Estimate estimate(CountingRules rules) {
            return Estimate.of(chance, rules.priorWorth());
        }
    }

    /** Nobody said anything. */
    record Nothing() implements Prior {

        @Override
        public Estimate estimate(CountingRules rules) {
            return Estimate.unknown();
        }
    }

    /**
     * Returns the estimate it makes, worth as many jobs as the rules say.
     *
     * @param rules the shop's rules
     * @return the estimate before any job is counted
     */
    Estimate estimate(CountingRules rules);
}
