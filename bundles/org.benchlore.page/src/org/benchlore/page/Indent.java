// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

/**
 * Depth of an item in a list, written as no-break spaces before it, so that a list of one level can show a tree
 * wherever it is shown.
 */
final class Indent {

    private static final String STEP = "\u00a0\u00a0\u00a0\u00a0";

    private Indent() {
    }

    static List<Span> by(int level, List<Span> item) {
        return level == 0 ? item : Spans.concat(List.of(Span.of(STEP.repeat(level))), item);
    }

    static int level(List<Span> item) {
        return item.isEmpty() ? 0 : spaces(item.get(0).text()) / STEP.length();
    }

    /** Returns an item without its indentation. */
    static List<Span> without(List<Span> item) {
        return level(item) == 0 ? item : item.subList(1, item.size());
    }

    private static int spaces(String text) {
        return text.chars().allMatch(letter -> letter == STEP.charAt(0)) ? text.length() : 0;
    }
}
