// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

/** Measures every character as ten pixels, whatever its look. */
record FixedRuler(int pageWidth) implements Ruler {

    static final int CHARACTER = 10;

    @Override
    public int width(String words, Style style) {
        return words.length() * CHARACTER;
    }

    @Override
    public int room() {
        return CHARACTER;
    }
}
