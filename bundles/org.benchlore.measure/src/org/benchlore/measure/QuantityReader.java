// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Reads one quantity from a text and says in one sentence what is wrong if it cannot. */
final class QuantityReader {
    private static final Pattern LETTERS_THEN_DIGIT = Pattern.compile("[\\p{L}]+[+-]?[0-9].*");

    private final String example;

    QuantityReader(Dimension expected) {
        example = (expected == null ? Dimension.TORQUE : expected).example();
    }

    Quantity read(String entered) {
        var text = DecimalText.clean(entered, example);
        var inches = InchFraction.read(text);
        if (inches.isPresent()) {
            return inches.get();
        }
        var parts = DurationText.read(text);
        return parts.isPresent() ? parts.get() : single(text);
    }

    private Quantity single(String text) {
        var number = DecimalText.read(text, example);
        var rest = text.substring(number.end());
        var unit = MeasureUnits.find(rest).orElseThrow(() -> badUnit(text, rest));
        var dimension = unit.dimension();
        if (number.value().signum() < 0 && !dimension.signed()) {
            throw Wording.problem(text, "is below zero, which " + dimension.words() + " cannot be",
                    dimension.example());
        }
        if (dimension == Dimension.TEMPERATURE && isBelowAbsoluteZero(unit, number)) {
            throw Wording.problem(text, "is colder than anything can be", dimension.example());
        }
        return new Quantity(number.value(), unit, text);
    }

    private static boolean isBelowAbsoluteZero(MeasureUnit unit, DecimalText number) {
        return unit.compare(number.value(), BigDecimal.ZERO, MeasureUnits.KELVIN) < 0;
    }

    private IllegalArgumentException badUnit(String text, String rest) {
        if (rest.isBlank()) {
            return Wording.problem(text, "has no unit", example);
        }
        if (LETTERS_THEN_DIGIT.matcher(rest).matches()) {
            return Wording.problem(text, "has a letter within the number", example);
        }
        if (rest.chars().anyMatch(c -> c >= '0' && c <= '9')) {
            return Wording.problem(text, "holds more than one number", example);
        }
        return Wording.problem(text, "has a unit that is not known here ('" + Wording.shorten(rest) + "')", example);
    }
}
