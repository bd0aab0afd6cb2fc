// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * An amount of money in the shop's one currency, which it does not name: zero or more, at most four decimals, with
 * the text as entered. Equality is by value and text; compare amounts with {@link #compareTo}.
 */
public record Amount(BigDecimal value, String text) implements Comparable<Amount> {
    private static final String EXAMPLE = "148.50";
    private static final int DECIMALS = 4;

    public Amount {
        Objects.requireNonNull(value);
        Objects.requireNonNull(text);
        if (value.signum() < 0) {
            throw Wording.problem(text, "is below zero, which an amount cannot be", EXAMPLE);
        }
        if (value.scale() > DECIMALS) {
            throw Wording.problem(text, "has more than four decimals", EXAMPLE);
        }
    }

    /**
     * Reads an amount such as {@code 148.50} or {@code 148,50}.
     *
     * @throws IllegalArgumentException with one plain sentence saying what is wrong and what is right
     */
    public static Amount parse(String text) {
        var cleaned = DecimalText.clean(text, EXAMPLE);
        var number = DecimalText.read(cleaned, EXAMPLE);
        if (number.end() < cleaned.length()) {
            throw Wording.problem(cleaned, "holds more than digits (leave the currency out)", EXAMPLE);
        }
        return new Amount(number.value(), cleaned);
    }

    /** An amount from a computed value, rounded by the caller to at most four decimals. */
    public static Amount of(BigDecimal value) {
        return new Amount(value, value.toPlainString());
    }

    @Override
    public int compareTo(Amount other) {
        return value.compareTo(other.value);
    }

    /** The text as entered. */
    @Override
    public String toString() {
        return text;
    }
}
