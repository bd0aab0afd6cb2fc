// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;

import org.benchlore.store.Row;

/**
 * One element that was found.
 *
 * @param row its facts
 * @param excerpt the passage that fits best, on one line; may be empty
 * @param marks places in the excerpt that fit what was typed, in order
 * @param why where it was found, in words, best reason first
 */
public record Hit(Row row, String excerpt, List<Mark> marks, List<String> why) {

    /**
     * A place in a text.
     *
     * @param start first character
     * @param end behind the last character
     */
    public record Mark(int start, int end) {
    }
}
