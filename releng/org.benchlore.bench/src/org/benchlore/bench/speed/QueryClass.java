// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

/** What people type, by what it asks of an engine. */
enum QueryClass {
    /** One word. */
    TERM("term"),
    /** Three words, any of which may be there. */
    ANY_OF_THREE("3-term OR"),
    /** Two words that stand together. */
    PHRASE("phrase"),
    /** The first two letters of a word. */
    TWO_LETTERS("2-letter prefix"),
    /** A word and the first three letters of another. */
    WORD_AND_LETTERS("word + 3-letter prefix"),
    /** A word with one wrong letter. */
    NEAR("near spelling"),
    /** A fault code. */
    CODE("exact code");

    private final String label;

    QueryClass(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
