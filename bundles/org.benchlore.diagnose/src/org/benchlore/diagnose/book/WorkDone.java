// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.Named;
import org.benchlore.model.Address;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Procedure;
import org.benchlore.model.Round;

/**
 * The work that did not cure.
 *
 * @param work the procedure named
 * @param procedure the same, loaded
 * @param with it and all that is done with it: included and after closing
 * @param renewed components it renewed
 * @param disturbed components it disturbed, with how
 * @param steps steps of opening and of the work that disturb something
 * @param job the job record it was done in, if there is one
 * @param rounds the job's rounds up to the last teach-in that failed and up to the work itself, all if none failed
 */
public record WorkDone(Named work, Procedure procedure, Set<Address> with, Set<Address> renewed,
        Map<Address, String> disturbed, List<Disturbance> steps, Optional<JobRecord> job, List<Round> rounds) {

    /** What sort of thing a step disturbs. */
    public enum Sort {
        /** A plug or a connector. */
        CONNECTOR("connector"),
        /** A line was opened: air. */
        AIR("air"),
        /** A mark that must be met again. */
        MARK("mark"),
        /** Grease where it belongs, and not where it does not. */
        GREASE("grease");

        private final String word;

        Sort(String word) {
            this.word = word;
        }

        /**
         * Returns it in a word.
         *
         * @return a noun
         */
        public String word() {
            return word;
        }
    }

    /**
     * A step that disturbs something.
     *
     * @param sort what sort
     * @param text the step
     * @param address where it stands
     */
    public record Disturbance(Sort sort, String text, Address address) {
    }

    boolean renewed(List<Address> upwards) {
        return upwards.stream().anyMatch(renewed::contains);
    }
}
