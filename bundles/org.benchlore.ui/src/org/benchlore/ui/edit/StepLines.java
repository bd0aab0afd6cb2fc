// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.regex.Pattern;

/** Lines of a text as the texts of steps: without blank ones and without the numbers or dashes that stand in front. */
final class StepLines {

    /** '3.', '3)', '3 -' or a dash or dot; a quantity such as '3.5 mm' or '2 bolts' is none. */
    private static final Pattern NUMBER = Pattern.compile(
            "^\\s*(?:\\d{1,3}\\s?[.)]|\\d{1,3}\\s[-\u2013]|[-\u2013\u2022*])\\s+");

    private StepLines() {
    }

    static List<String> of(String text) {
        return text.lines().map(line -> NUMBER.matcher(line).replaceFirst("").strip()).filter(line -> !line.isEmpty())
                .toList();
    }
}
