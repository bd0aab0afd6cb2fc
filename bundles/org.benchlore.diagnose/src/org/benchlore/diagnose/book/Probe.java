// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.List;
import java.util.Set;

import org.benchlore.diagnose.Named;
import org.benchlore.model.Address;

/**
 * A check that the library knows: a step with outcomes, or the check in words that a cause itself has.
 *
 * @param address the step or the cause
 * @param procedure the procedure of the step, or the cause
 * @param text what to do
 * @param outcomes what may be found
 * @param opens names of what must be open, the procedure itself for a step, since its time is spent once
 * @param minutes its own time
 * @param around minutes of the procedure around a step, 0 for a cause's own check
 * @param timed false if no time is recorded
 * @param accesses what must be opened, to be read
 */
public record Probe(Address address, Named procedure, String text, List<Outcome> outcomes, Set<String> opens,
        double minutes, double around, boolean timed, List<Named> accesses) {

    /**
     * What may be found.
     *
     * @param id what an answer names it by
     * @param answer in words
     * @param points causes it speaks for
     * @param against causes it speaks against
     */
    public record Outcome(String id, String answer, Set<Address> points, Set<Address> against) {

        /**
         * Tells whether it says anything about a cause.
         *
         * @return false if it neither points nor speaks against
         */
        public boolean tells() {
            return !points.isEmpty() || !against.isEmpty();
        }
    }

    /**
     * Returns the causes it can find.
     *
     * @return causes that an outcome points at
     */
    public Set<Address> finds() {
        return outcomes.stream().flatMap(outcome -> outcome.points().stream())
                .collect(java.util.stream.Collectors.toSet());
    }
}
