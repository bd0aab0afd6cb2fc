// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.benchlore.model.Address;

/**
 * What is asked of the evidence: how an old part goes on that is left in, and a new one that is fitted.
 *
 * @param component the component
 * @param oldPart number of the part in place, where known
 * @param newPart number of the part that would be fitted, where known
 * @param today the day up to which jobs were followed
 * @param horizonMonths how long it has to hold: until the next opening or the end of keeping; empty for open
 * @param wear chance that it wears out by then, from life data and its age, where known
 */
public record Question(Address component, Optional<Address> oldPart, Optional<Address> newPart, LocalDate today,
        OptionalInt horizonMonths, OptionalDouble wear) {

    /**
     * Asks of a component with nothing more known.
     *
     * @param component the component
     * @param today the day
     * @return the question
     */
    public static Question of(Address component, LocalDate today) {
        return new Question(component, Optional.empty(), Optional.empty(), today, OptionalInt.empty(),
                OptionalDouble.empty());
    }

    /**
     * Asks the same of part numbers.
     *
     * @param before the one in place
     * @param after the one that would be fitted
     * @return the question
     */
    public Question with(Optional<Address> before, Optional<Address> after) {
        return new Question(component, before, after, today, horizonMonths, wear);
    }

    /**
     * Asks the same for a time.
     *
     * @param months months it has to hold
     * @return the question
     */
    public Question within(int months) {
        return new Question(component, oldPart, newPart, today, OptionalInt.of(months), wear);
    }

    /**
     * Asks the same with a figure from life data.
     *
     * @param chance chance that it wears out within the time
     * @return the question
     */
    public Question wearing(double chance) {
        return new Question(component, oldPart, newPart, today, horizonMonths, OptionalDouble.of(chance));
    }
}
