// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Inch sizes as they stand on tools: {@code 1/2 in}, {@code 1 1/8 in}; the denominator is a power of two to 128. */
final class InchFraction {
    private static final Pattern FORM = Pattern.compile(
            "(?:([0-9]{1,3})[ \u00A0-])?([0-9]{1,3})/([0-9]{1,3})(?![0-9])(.+)");

    private InchFraction() {
    }

    static Optional<Quantity> read(String text) {
        var matcher = FORM.matcher(text);
        if (!matcher.matches() || !MeasureUnits.find(matcher.group(4)).filter(MeasureUnits.INCH::equals).isPresent()) {
            return Optional.empty();
        }
        int numerator = Integer.parseInt(matcher.group(2));
        int denominator = Integer.parseInt(matcher.group(3));
        boolean binary = denominator > 1 && denominator <= 128 && Integer.bitCount(denominator) == 1;
        if (!binary || numerator == 0 || numerator >= denominator) {
            return Optional.empty();
        }
        var whole = matcher.group(1) == null ? BigDecimal.ZERO : new BigDecimal(matcher.group(1));
        var value = whole.add(BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator)));
        return Optional.of(new Quantity(value, MeasureUnits.INCH, text));
    }
}
