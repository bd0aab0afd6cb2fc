// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;

/**
 * Why a hit is one, to be shown beside it.
 *
 * @param text the passage that fits best, on one line; may be empty
 * @param marks places in the passage that fit what was typed, in order
 * @param titleMarks places in the row's title that fit, in order
 * @param why where it was found, in words, best reason first
 */
public record Passage(String text, List<Mark> marks, List<Mark> titleMarks, List<String> why) {

    /**
     * A place in a text.
     *
     * @param start first character
     * @param end behind the last character
     */
    public record Mark(int start, int end) {
    }
}
