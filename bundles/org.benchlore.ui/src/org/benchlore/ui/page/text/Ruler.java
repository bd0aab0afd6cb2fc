// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

/** Measures words. */
public interface Ruler {

    /**
     * Returns how wide words are.
     *
     * @param words one line of text without tabs
     * @param style their look
     * @return pixels
     */
    int width(String words, Style style);

    /**
     * Returns how wide the page is.
     *
     * @return pixels between the margins
     */
    int pageWidth();

    /**
     * Returns the unit of empty room.
     *
     * @return pixels, about half the height of a line of plain words
     */
    int room();
}
