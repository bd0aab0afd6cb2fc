// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a customer's sheet said, as its reference line holds it.
 *
 * @param day the day of the sheet
 * @param subject id of the machine or unit
 * @param procedures ids of what was to be done
 * @param total price with tax
 * @param currency ISO 4217 code, or empty
 * @param handBack the day it was to be handed back
 */
public record EarlierSheet(LocalDate day, String subject, List<String> procedures, BigDecimal total, String currency,
        LocalDate handBack) {

    private static final String DATE = "([0-9]{4}-[0-9]{2}-[0-9]{2})";
    private static final Pattern LINE = Pattern.compile("Our reference: " + DATE + " / ([a-z0-9-]+) / ([a-z0-9+-]+) / "
            + "([0-9]+(?:\\.[0-9]+)?) ?([A-Z]{0,3}) / " + DATE);

    /**
     * Reads the reference line of a sheet.
     *
     * @param text text or HTML of a sheet
     * @return what it said, or empty if there is no such line
     */
    public static Optional<EarlierSheet> read(String text) {
        var line = LINE.matcher(text.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " "));
        return line.find() ? Optional.of(new EarlierSheet(LocalDate.parse(line.group(1)), line.group(2),
                List.of(line.group(3).split("\\+")), new BigDecimal(line.group(4)), line.group(5), LocalDate.parse(line.group(6))))
                : Optional.empty();
    }

    /** The line that stands on the sheet. */
    String line() {
        return "Our reference: " + day + " / " + subject + " / " + String.join("+", procedures) + " / "
                + AddingPage.amount(total) + (currency.isEmpty() ? "" : " " + currency) + " / " + handBack;
    }
}
