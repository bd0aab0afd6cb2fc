// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.time.LocalDate;
import java.util.Optional;

import org.benchlore.model.Address;

/**
 * One time a component was left in or renewed on a unit, and how it went on.
 *
 * @param job path of the job
 * @param unit the unit
 * @param part number of the part that was left in or fitted, where known
 * @param from the day from which it is followed: handed back, or while open the day it began
 * @param until the day until which it was followed: trouble, the next opening, the end of keeping or today
 * @param course how it went on
 */
record Event(String job, Address unit, Optional<Address> part, LocalDate from, LocalDate until, Course course) {

    /** How it went on. */
    enum Course {
        /** It showed before the unit was handed back. */
        AT_ONCE,
        /** It brought the unit back. */
        LATER,
        /** Nothing was seen of it. */
        HELD
    }

    /** Tells whether it was followed for so many months. */
    boolean followed(int months) {
        return course == Course.AT_ONCE || !until.isBefore(from.plusMonths(months));
    }

    /** Tells whether it failed at once or within so many months. */
    boolean failed(int months) {
        return course == Course.AT_ONCE || course == Course.LATER && !until.isAfter(from.plusMonths(months));
    }
}
