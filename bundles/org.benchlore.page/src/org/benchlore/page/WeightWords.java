// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static java.util.Map.entry;

import java.util.Map;

import org.benchlore.model.WeightKind;
import org.eclipse.emf.common.util.Enumerator;

/** The weights of ranking causes in words. */
final class WeightWords {

    static final Map<Enumerator, String> WORDS = Map.ofEntries(
            entry(WeightKind.MET_OFTEN, "a cause that the book calls often"),
            entry(WeightKind.MET_SOMETIMES, "a cause that the book calls met sometimes"),
            entry(WeightKind.MET_RARELY, "a cause that the book calls met rarely"),
            entry(WeightKind.MET_NOT_SAID, "a cause of which the book does not say how often"),
            entry(WeightKind.SOMETHING_ELSE, "something that stands in no book"),
            entry(WeightKind.BOOK_LINKS, "a finding that the book ties to a cause"),
            entry(WeightKind.SUSPECTED_LINKS, "a finding that a note suspects of a cause"),
            entry(WeightKind.SEEN_LINKS, "a finding with which we have seen a cause"),
            entry(WeightKind.HELD_LINKS, "a finding whose fix held"),
            entry(WeightKind.MAKER_LINKS, "a finding that a document of the maker ties to a component"),
            entry(WeightKind.CODE_LINKS, "a code that only names a component"),
            entry(WeightKind.ELSE_LINKS, "a finding with something that stands in no book"),
            entry(WeightKind.STRAY, "a finding without any fault behind it"),
            entry(WeightKind.CHECK_SHOWS, "a check that finds a fault that is there, or clears one that is not"),
            entry(WeightKind.CHECK_STRAY, "a check that points at a fault that is not there"),
            entry(WeightKind.SUSPECTED_COUNTS, "a suspected case beside one that was seen"),
            entry(WeightKind.OTHER_WORK_COUNTS, "a case seen during other work that changes the machine"),
            entry(WeightKind.NEW_PART, "how much less a new part is suspected"),
            entry(WeightKind.OLD_PART_KEPT, "how much more an old part in the same chain is suspected"),
            entry(WeightKind.DISTURBED, "how much more something the work has disturbed is suspected"),
            entry(WeightKind.CHECK_MINUTES, "minutes of a check whose time is not recorded"));

    private WeightWords() {
    }
}
