// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

/** Every number that decides an order. What was tried and dropped stands in the decision record on ranking. */
final class Mix {

    /** A word that means the same as the one typed. */
    static final float MEANS = 0.5f;
    /** A word of the library that is spelt nearly so. */
    static final float NEAR = 0.6f;
    /** A word that begins with what was typed. */
    static final float BEGINS = 0.8f;
    /** A word that stands in the title or in a symptom as well. */
    static final float HEAD = 0.3f;
    /** Two words typed one after the other that stand close together, for each pair. */
    static final float PAIR = 0.15f;
    /** Words that may stand between a pair. */
    static final int PAIR_SLOP = 3;
    /** A fault code: worth about three rare words. */
    static final float CODE = 30f;
    /** A part number of which a piece was typed. */
    static final float NUMBER = 20f;
    /** Pieces of words, where all texts are short and the question is. */
    static final float GRAMS = 0.4f;
    /** How much of that goes to the pieces of words that mean the same. */
    static final float GRAMS_OF_MEANINGS = 0.5f;
    /** A word that shares fewer of its pieces than this part is another word. */
    static final float LEAST_SHARE_OF_GRAMS = 0.4f;
    /** Below this weight, pieces of words are not worth their time. */
    static final float LEAST_GRAMS = 0.02f;
    /** Texts of so many words count as short. */
    static final int SHORT_TEXT = 15;
    /** Questions of so many words count as short. */
    static final int SHORT_QUESTION = 12;
    /** A word that stands by itself in so many elements is taken as finished, even while it is typed. */
    static final int OFTEN = 200;
    /** So many times the asked-for rows are put in order by more than the words in them. */
    static final int WINDOW = 3;
    /** At least so many rows are. */
    static final int LEAST_WINDOW = 30;
    /** An element for the asked-for machine stands before one that is for all, in per cent. */
    static final int OF_THE_MACHINE = 125;

    private Mix() {
    }

    /**
     * Returns the weight of pieces of words: full where texts and question are short, falling with the square of their
     * length, and only as far as texts have such pieces at all. Measured, see the decision record.
     *
     * @param share part of all elements whose pieces are in the index, 0 to 1
     * @param textWords mean number of words of an element
     * @param questionWords number of words typed
     */
    static float grams(double share, double textWords, int questionWords) {
        double texts = Math.min(1, SHORT_TEXT / Math.max(1, textWords));
        double question = Math.min(1, (double) SHORT_QUESTION / Math.max(1, questionWords));
        return (float) (GRAMS * share * texts * texts * question * question);
    }
}
