// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times written in parts: {@code 1 h 30 min}, {@code 2 days 4 h}, and ISO 8601 durations of days and less such as
 * {@code PT1H30M}. Months and years are left out: their length depends on the calendar.
 */
final class DurationText {
    private static final Pattern ISO = Pattern.compile("P(?:([0-9.,]+)D)?(T(?:([0-9.,]+)H)?(?:([0-9.,]+)M)?"
            + "(?:([0-9.,]+)S)?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern PART = Pattern.compile(
            "( ?(?:,|and)? ?)([0-9]+(?:[.,][0-9]+)?)[ \u00A0]?([A-Za-z]+)\\.?");

    private record Part(BigDecimal value, MeasureUnit unit) {
    }

    private DurationText() {
    }

    /** The time in its smallest written unit; empty if the text is no time in parts. */
    static Optional<Quantity> read(String text) {
        var iso = ISO.matcher(text);
        return (iso.matches() ? isoParts(iso) : wordParts(text)).filter(DurationText::descending)
                .flatMap(parts -> total(parts, text));
    }

    private static Optional<List<Part>> isoParts(Matcher iso) {
        var parts = new ArrayList<Part>();
        int[] groups = {1, 3, 4, 5};
        var units = List.of(MeasureUnits.DAY, MeasureUnits.HOUR, MeasureUnits.MINUTE, MeasureUnits.SECOND);
        for (int i = 0; i < groups.length; i++) {
            var digits = iso.group(groups[i]);
            if (digits != null) {
                parts.add(new Part(number(digits), units.get(i)));
            }
        }
        boolean emptyTime = iso.group(2) != null && iso.group(2).length() == 1;
        return parts.isEmpty() || emptyTime ? Optional.empty() : Optional.of(parts);
    }

    private static Optional<List<Part>> wordParts(String text) {
        var parts = new ArrayList<Part>();
        var matcher = PART.matcher(text);
        int end = 0;
        while (end < text.length() && matcher.find(end) && matcher.start() == end) {
            var unit = MeasureUnits.find(matcher.group(3)).filter(found -> found.dimension() == Dimension.TIME);
            if (unit.isEmpty()) {
                return Optional.empty();
            }
            parts.add(new Part(number(matcher.group(2)), unit.get()));
            end = matcher.end();
        }
        return end == text.length() && !parts.isEmpty() ? Optional.of(parts) : Optional.empty();
    }

    private static BigDecimal number(String digits) {
        var number = DecimalText.read(digits, Dimension.TIME.example());
        if (number.end() < digits.length()) {
            throw Wording.problem(digits, "is not one number", Dimension.TIME.example());
        }
        return number.value();
    }

    private static boolean descending(List<Part> parts) {
        for (int i = 1; i < parts.size(); i++) {
            if (parts.get(i).unit.compare(BigDecimal.ONE, BigDecimal.ONE, parts.get(i - 1).unit) >= 0) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Quantity> total(List<Part> parts, String text) {
        var smallest = parts.get(parts.size() - 1).unit;
        var sum = parts.stream().map(part -> part.unit.convert(part.value, smallest))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return Optional.of(new Quantity(sum, smallest, text));
    }
}
