// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.ladder;

import java.util.List;

/**
 * One rung of the ladder.
 *
 * @param kind which
 * @param items what to look at, in order
 */
public record Rung(Kind kind, List<Item> items) {

    /** The rungs, from what is quickly seen to what is rarely the matter. */
    public enum Kind {
        /** Whether the conditions of the teach-in held, as measured. */
        CONDITIONS("Were the conditions of the teach-in met, as measured?"),
        /** What the work has disturbed: connectors, air, marks, grease. */
        DISTURBED("What did the work disturb?"),
        /** Old parts in the same chain. */
        OLD_PARTS("Which old parts are still in the chain?"),
        /** New parts that are wrong or bad. */
        NEW_PARTS("Is a new part wrong or bad?"),
        /** Software and learned values. */
        SOFTWARE("Software and learned values");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * Returns the rung as a question.
         *
         * @return words of a heading
         */
        public String words() {
            return words;
        }
    }
}
