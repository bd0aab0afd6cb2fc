// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;

import org.benchlore.model.Round;
import org.benchlore.plan.card.CardLine;

/** What stands in the tree of a job. */
sealed interface Node {

    /** The same for the same thing after a change. */
    String key();

    /** Some fields of the record itself. */
    record Fields(Part part) implements Node {

        @Override
        public String key() {
            return part.name();
        }
    }

    /** A round. */
    record OfRound(Round round, int number) implements Node {

        @Override
        public String key() {
            return "round " + round.getId();
        }
    }

    /**
     * A line of a round's card.
     *
     * @param boxes what is to be filled in for it, in the order of its steps
     */
    record OfTask(Round round, CardLine.Task task, List<CardLine> boxes) implements Node {

        @Override
        public String key() {
            return "task " + round.getId() + " " + task.part() + " " + task.place() + " " + task.before();
        }
    }

    /** Parts of a record that stand before and after its rounds. */
    enum Part {
        /** Unit, complaint, codes. */
        ARRIVAL("arrival"),
        /** What a strip would destroy. */
        SAVED("saved"),
        /** Old parts left in place. */
        LEFT("leftIn"),
        /** What the customer was asked. */
        OFFERS("offers"),
        /** What was found and how it was proved. */
        ENDED("ended", "comeback");

        private final List<String> sections;

        Part(String... sections) {
            this.sections = List.of(sections);
        }

        List<String> sections() {
            return sections;
        }

        String words() {
            return switch (this) {
                case ARRIVAL -> Messages.arrival;
                case SAVED -> Messages.saved;
                case LEFT -> Messages.left;
                case OFFERS -> Messages.offers;
                case ENDED -> Messages.ended;
            };
        }

        boolean isBeforeRounds() {
            return this == ARRIVAL || this == SAVED;
        }
    }
}
