// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Address;

/** A run of text within a paragraph, a cell or an item. */
public sealed interface Span {

    /**
     * Returns the words as they are read.
     *
     * @return plain text
     */
    String text();

    /**
     * Plain or strong words.
     *
     * @param text the words
     * @param strong whether they stand out
     */
    record Words(String text, boolean strong) implements Span {
    }

    /**
     * Words that lead to an element.
     *
     * @param text the words
     * @param target where they lead
     */
    record Link(String text, Address target) implements Span {
    }

    /**
     * Makes plain words.
     *
     * @param text the words
     * @return the span
     */
    static Span of(String text) {
        return new Words(text, false);
    }

    /**
     * Makes strong words.
     *
     * @param text the words
     * @return the span
     */
    static Span strong(String text) {
        return new Words(text, true);
    }
}
