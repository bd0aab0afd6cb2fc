// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.random.RandomGenerator;

import org.benchlore.bench.TextEntry;

/**
 * Invented notes: 60 to 120 words each after Zipf, a fault code in every third. The same number and seed give the same
 * notes. They say nothing about relevance.
 *
 * @param notes the notes
 * @param codes numbers of the notes that hold a code, by code
 */
record Corpus(List<TextEntry> notes, Map<String, List<Integer>> codes) {

    private static final int VOCABULARY = 20_000;
    private static final int FEWEST_WORDS = 60;
    private static final int MOST_WORDS = 120;
    private static final int NOTES_WITH_CODE = 3;
    private static final int NOTES_A_CODE = 20;

    /** Makes notes. */
    static Corpus of(int number, long seed) {
        var random = new Random(seed);
        var vocabulary = new Vocabulary(VOCABULARY, random);
        var pool = pool(Math.max(10, number / NOTES_A_CODE), random);
        var notes = new ArrayList<TextEntry>();
        var codes = new LinkedHashMap<String, List<Integer>>();
        for (int i = 0; i < number; i++) {
            var words = words(between(FEWEST_WORDS, MOST_WORDS, random), vocabulary, random);
            if (i % NOTES_WITH_CODE == 0) {
                var code = pool.get(random.nextInt(pool.size()));
                codes.computeIfAbsent(code, known -> new ArrayList<>()).add(i);
                words.set(random.nextInt(words.size()), code);
            }
            notes.add(new TextEntry("n" + i, title(vocabulary, random), String.join(" ", words)));
        }
        return new Corpus(List.copyOf(notes), codes);
    }

    private static List<String> pool(int size, RandomGenerator random) {
        var pool = new ArrayList<String>();
        for (int i = 0; i < size; i++) {
            pool.add("PCBU".charAt(random.nextInt(4)) + String.format("%04X", random.nextInt(0x4000)));
        }
        return pool;
    }

    private static String title(Vocabulary vocabulary, RandomGenerator random) {
        return String.join(" ", words(between(3, 6, random), vocabulary, random));
    }

    private static List<String> words(int number, Vocabulary vocabulary, RandomGenerator random) {
        var words = new ArrayList<String>();
        for (int i = 0; i < number; i++) {
            words.add(vocabulary.next(random));
        }
        return words;
    }

    private static int between(int least, int most, RandomGenerator random) {
        return least + random.nextInt(most - least + 1);
    }
}
