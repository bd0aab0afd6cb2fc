// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

import java.util.List;

import org.benchlore.pack.zip.Manifest;

/**
 * What taking a pack would do.
 *
 * @param manifest the pack's list of contents
 * @param items its files by path
 */
public record Preview(Manifest manifest, List<Item> items) {

    /**
     * Returns the files of one verdict.
     *
     * @param verdict a verdict
     * @return by path
     */
    public List<Item> of(Verdict verdict) {
        return items.stream().filter(item -> item.verdict() == verdict).toList();
    }

    /**
     * Tells whether there is anything to take without a question.
     *
     * @return true if something is new or changed
     */
    public boolean hasNews() {
        return !of(Verdict.NEW).isEmpty() || !of(Verdict.CHANGED).isEmpty();
    }
}
