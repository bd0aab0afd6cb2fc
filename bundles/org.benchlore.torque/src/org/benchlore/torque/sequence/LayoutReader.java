// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.regex.Pattern;

import org.benchlore.measure.Wording;

/** Reads how fasteners lie. */
final class LayoutReader {

    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,4}");
    private static final Pattern SIDES = Pattern.compile("([0-9]{1,4}) ?[xX×*] ?([0-9]{1,4})");

    private LayoutReader() {
    }

    static Layout circle(String text) {
        var trimmed = text == null ? "" : text.strip();
        if (!WHOLE.matcher(trimmed).matches()) {
            throw Wording.problem(trimmed, "is no number of fasteners in a circle", "8");
        }
        return new Layout.Circle(Integer.parseInt(trimmed));
    }

    static Layout grid(String text) {
        var trimmed = text == null ? "" : text.strip();
        var sides = SIDES.matcher(trimmed);
        if (!sides.matches()) {
            throw Wording.problem(trimmed, "is no rectangle of rows and columns", "2x5, or 1x6 for a row");
        }
        return new Layout.Grid(Integer.parseInt(sides.group(1)), Integer.parseInt(sides.group(2)));
    }
}
