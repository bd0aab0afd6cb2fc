// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A pack that was made.
 *
 * @param on the day
 * @param title what people call the pack
 * @param out where it was written
 * @param procedures what it carries: each the id of a procedure, with {@code @} and its revision where it has one
 */
public record PackEntry(LocalDate on, String title, String out, List<String> procedures) {

    private static final char MARK = '@';

    /** Makes an entry that nobody changes afterwards. */
    public PackEntry {
        procedures = List.copyOf(procedures);
    }

    /** Whether it carries a procedure, in whatever revision. */
    boolean carries(String procedureId) {
        return procedures.stream().anyMatch(one -> id(one).equals(procedureId));
    }

    /**
     * Returns the revision of a procedure in the pack.
     *
     * @param procedureId id of a procedure
     * @return the revision as it was written down; empty if it is not carried, or none was written down
     */
    public Optional<String> revision(String procedureId) {
        return procedures.stream().filter(one -> id(one).equals(procedureId) && one.indexOf(MARK) >= 0)
                .map(one -> one.substring(one.indexOf(MARK) + 1)).findFirst();
    }

    private static String id(String procedure) {
        int mark = procedure.indexOf(MARK);
        return mark < 0 ? procedure : procedure.substring(0, mark);
    }
}
