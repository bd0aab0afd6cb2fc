// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.page.EarlierSheet;

/**
 * What somebody puts on a customer's sheet.
 *
 * @param advice what the shop advises and why, in the words of who chose it
 * @param found what was found
 * @param photo picture of it
 * @param declined ids of offered work that the customer declined
 * @param validUntil until when its prices hold; empty for what the shop's page says
 * @param first the sheet that it takes the place of
 */
public record SheetWish(Optional<String> advice, Optional<String> found, Optional<SheetPhoto> photo, List<String> declined,
        Optional<LocalDate> validUntil, Optional<EarlierSheet> first) {
}
