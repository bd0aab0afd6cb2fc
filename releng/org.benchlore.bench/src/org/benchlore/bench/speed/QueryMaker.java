// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Takes queries out of notes, so that every one of them has something to find. */
final class QueryMaker {

    /** Words that stand in more notes than one in this many are left out: nobody looks for them. */
    private static final int TOO_COMMON = 4;
    private static final int SHORTEST = 4;

    private final Corpus corpus;
    private final List<String> codes;
    private final Map<String, Integer> notesWith = new HashMap<>();
    private final Random random;

    QueryMaker(Corpus corpus, long seed) {
        this.corpus = corpus;
        this.codes = List.copyOf(corpus.codes().keySet());
        this.random = new Random(seed);
        corpus.notes().forEach(note -> Arrays.stream(note.text().split(" ")).distinct()
                .forEach(word -> notesWith.merge(word, 1, Integer::sum)));
    }

    /** Returns queries as somebody would type them. */
    List<String> make(QueryClass kind, int number) {
        var queries = new ArrayList<String>();
        for (int i = 0; i < number; i++) {
            queries.add(one(kind));
        }
        return queries;
    }

    private String one(QueryClass kind) {
        return switch (kind) {
            case TERM -> word();
            case ANY_OF_THREE -> word() + " " + word() + " " + word();
            case PHRASE -> pair();
            case TWO_LETTERS -> word().substring(0, 2);
            case WORD_AND_LETTERS -> word() + " " + word().substring(0, 3);
            case NEAR -> misspelt(word());
            case CODE -> codes.get(random.nextInt(codes.size()));
        };
    }

    private String[] someNote() {
        return corpus.notes().get(random.nextInt(corpus.notes().size())).text().split(" ");
    }

    private String word() {
        while (true) {
            var note = someNote();
            var word = note[random.nextInt(note.length)];
            if (isAsked(word)) {
                return word;
            }
        }
    }

    private String pair() {
        while (true) {
            var note = someNote();
            int at = random.nextInt(note.length - 1);
            if (isAsked(note[at]) && isAsked(note[at + 1])) {
                return note[at] + " " + note[at + 1];
            }
        }
    }

    private boolean isAsked(String word) {
        return word.length() >= SHORTEST && Character.isLowerCase(word.charAt(0))
                && notesWith.getOrDefault(word, 0) * TOO_COMMON <= corpus.notes().size();
    }

    /** Puts one letter wrong, never the first. */
    private String misspelt(String word) {
        int at = 1 + random.nextInt(word.length() - 1);
        char other = (char) ('a' + (word.charAt(at) - 'a' + 1 + random.nextInt(25)) % 26);
        return word.substring(0, at) + other + word.substring(at + 1);
    }
}
