// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.page.Block.Picture;

/**
 * What people put on a customer's sheet; the program proposes none of it.
 *
 * @param advice what the shop advises and why, in the words of who chose it
 * @param found what was found
 * @param photo picture of it
 * @param declined ids of offered work that the customer declined
 * @param validUntil until when its prices hold; empty for what the shop's page says
 * @param first the sheet that this one takes the place of
 * @param more what it comes to beyond that sheet, from where the machine stands, with tax
 */
public record SheetWords(Optional<String> advice, Optional<String> found, Optional<Picture> photo, List<String> declined,
        Optional<LocalDate> validUntil, Optional<EarlierSheet> first, Optional<BigDecimal> more) {

    /** A first sheet with nothing put in. */
    public static SheetWords none() {
        return new SheetWords(Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(),
                Optional.empty());
    }
}
