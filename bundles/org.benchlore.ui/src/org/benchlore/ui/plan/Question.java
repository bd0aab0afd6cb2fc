// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.time.LocalDate;
import java.util.Optional;

import org.benchlore.ui.session.Opened;

/**
 * What is to be planned.
 *
 * @param opened the library, if one is open
 * @param wanted what was picked
 * @param today the day of the plan
 */
record Question(Optional<Opened> opened, Wanted wanted, LocalDate today) {
}
