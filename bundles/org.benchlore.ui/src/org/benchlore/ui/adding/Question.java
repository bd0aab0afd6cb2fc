// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

import org.benchlore.plan.adding.Adding;
import org.benchlore.ui.plan.Wanted;
import org.benchlore.ui.session.Opened;

/**
 * What is to be weighed.
 *
 * @param opened the library, if one is open
 * @param wanted what is done, and where the machine stands
 * @param keep years the unit will be kept, if somebody says so
 * @param today the day of the plan
 * @param changes figures of one's own
 * @param own the answer with the shop's own figures, where only figures of one's own have changed since
 */
record Question(Optional<Opened> opened, Wanted wanted, OptionalInt keep, LocalDate today, Changes changes,
        Optional<Adding> own) {
}
