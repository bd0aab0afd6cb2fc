// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

/**
 * A document or a query as plain text.
 *
 * @param id its id in the set
 * @param title what a list shows; may be empty
 * @param text its words
 */
public record TextEntry(String id, String title, String text) {

    /**
     * Makes an entry without a title.
     *
     * @param id its id in the set
     * @param text its words
     */
    public TextEntry(String id, String text) {
        this(id, "", text);
    }

    /**
     * Returns everything that is to be found by.
     *
     * @return title and text
     */
    public String whole() {
        return title.isEmpty() ? text : title + "\n" + text;
    }
}
