// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Invented words and how often each is used: the share of the word at rank r goes with 1 / r, after Zipf. The
 * commonest words are the shortest.
 */
final class Vocabulary {

    private static final String[] BEGINNINGS = {"b", "d", "f", "g", "h", "k", "l", "m", "n", "p", "r", "s", "t", "v", "w",
        "br", "cl", "dr", "gr", "pl", "sp", "st", "tr", "sh", "th"};
    private static final String[] MIDDLES = {"a", "e", "i", "o", "u", "ai", "ea", "oo"};
    private static final String[] ENDS = {"", "", "", "n", "r", "s", "t", "l", "ck", "nd"};
    /** One more syllable after each tenfold of words. */
    private static final int FIRST_STEP = 100;

    private final List<String> words;
    private final double[] upTo;

    Vocabulary(int size, RandomGenerator random) {
        var made = new LinkedHashSet<String>();
        while (made.size() < size) {
            made.add(word(1 + steps(made.size()), random));
        }
        words = new ArrayList<>(made);
        upTo = new double[size];
        double sum = 0;
        for (int rank = 0; rank < size; rank++) {
            sum += 1.0 / (rank + 1);
            upTo[rank] = sum;
        }
    }

    private static int steps(int rank) {
        return rank < FIRST_STEP ? 0 : (int) Math.log10((double) rank / FIRST_STEP) + 1;
    }

    private static String word(int syllables, RandomGenerator random) {
        var word = new StringBuilder();
        for (int i = 0; i < syllables; i++) {
            word.append(one(BEGINNINGS, random)).append(one(MIDDLES, random));
        }
        return word.append(one(ENDS, random)).toString();
    }

    private static String one(String[] parts, RandomGenerator random) {
        return parts[random.nextInt(parts.length)];
    }

    /** Returns a word, the common ones oftener. */
    String next(RandomGenerator random) {
        double point = random.nextDouble() * upTo[upTo.length - 1];
        int found = Arrays.binarySearch(upTo, point);
        return words.get(found < 0 ? -found - 1 : found);
    }

    /** Returns the rank of a word, the commonest being 0; -1 for words that are none of these. */
    int rank(String word) {
        return words.indexOf(word);
    }
}
