// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Reads the model's simple values from text and refuses nonsense with a plain sentence. */
public final class Forms {

    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,7}");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,6})?");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2999;
    private static final int MOST = 1_000_000;

    private Forms() {
    }

    /**
     * Reads a calendar day.
     *
     * @param text ISO 8601, such as {@code 2026-11-25}
     * @return the day
     * @throws IllegalArgumentException if it is no day of the calendar
     */
    public static LocalDate date(String text) {
        try {
            var day = LocalDate.parse(text);
            year(Integer.toString(day.getYear()));
            return day;
        } catch (DateTimeException | IllegalArgumentException e) {
            throw new IllegalArgumentException("'" + text + "' is no day: write it as 2026-11-25", e);
        }
    }

    /**
     * Reads a year.
     *
     * @param text four digits
     * @return the year, 1900 to 2999
     * @throws IllegalArgumentException if it is no such year
     */
    public static Integer year(String text) {
        if (WHOLE.matcher(text).matches()) {
            int year = Integer.parseInt(text);
            if (year >= FIRST_YEAR && year <= LAST_YEAR) {
                return year;
            }
        }
        throw new IllegalArgumentException("'" + text + "' is no year: write four digits, such as 2019");
    }

    /**
     * Reads a count.
     *
     * @param text a whole number
     * @return the number, 0 to 1000000
     * @throws IllegalArgumentException if it is no such number
     */
    public static Integer count(String text) {
        if (WHOLE.matcher(text).matches() && Integer.parseInt(text) <= MOST) {
            return Integer.valueOf(text);
        }
        throw new IllegalArgumentException("'" + text + "' is no count: write a whole number such as 4");
    }

    /**
     * Reads a factor or a percentage.
     *
     * @param text a plain decimal number with a point
     * @return the number with the scale as written
     * @throws IllegalArgumentException if it is no such number
     */
    public static BigDecimal factor(String text) {
        if (DECIMAL.matcher(text).matches()) {
            return new BigDecimal(text);
        }
        throw new IllegalArgumentException("'" + text + "' is no number: write it as 19.5");
    }
}
