// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Operators, lone surrogates, very long words, control characters: fixed seeds, so that a failure can be repeated. */
class HostileTest {

    private static final int STRINGS_A_SEED = 25_000;
    private static final String ALPHABET = "ab4c17 \"*?~^:()[]{}\\/+-!&|<>=#%_'.,;\u0000\n\t\u00e4\ud83d\ude00\ud800"
            + "\u200f\u0130\u00df\u0301\u4e2d\u0e01ANDORNOTsptxe0139";
    private static final String[] WORDS = {"hydraulic", "actuator", "teach in", "4C17", "SPN 520192 FMI 31", "wont",
        "the", "o-ring", "P0841-64", "KT 40 3105-B", "lorry", "brg", "\ud83d\ude00", "\"", "*", "gear box"};

    @TempDir
    static Path folder;

    private static Demonstration demonstration;
    private static SearchIndex index;

    @BeforeAll
    static void open() throws Exception {
        demonstration = Demonstration.open(folder);
        index = demonstration.index();
    }

    @AfterAll
    static void close() throws Exception {
        demonstration.close();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 20261125, 4711, 987654321})
    void whateverIsTypedNothingThrows(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < STRINGS_A_SEED; i++) {
            var text = i % 3 == 0 ? words(random) : characters(random, i);
            var query = i % 10 == 0 ? Query.of(text).withCounts() : Query.of(text);
            var results = index.find(query);
            assertTrue(results.total() >= results.hits().stream().filter(Hit::whole).count());
            if (i % 50 == 0) {
                index.passages(query, results.hits().stream().map(Hit::row).limit(2).toList());
            }
        }
    }

    private static String characters(Random random, int i) {
        var text = new StringBuilder();
        int length = random.nextInt(i % 1000 == 0 ? 5000 : 30);
        for (int c = 0; c < length; c++) {
            text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return text.toString();
    }

    private static String words(Random random) {
        var text = new StringBuilder();
        int length = 1 + random.nextInt(random.nextInt(500) == 0 ? 400 : 5);
        for (int w = 0; w < length; w++) {
            var word = WORDS[random.nextInt(WORDS.length)];
            text.append(word, 0, random.nextInt(4) == 0 ? random.nextInt(word.length() + 1) : word.length())
                    .append(ALPHABET.charAt(random.nextInt(ALPHABET.length()))).append(' ');
        }
        return text.toString();
    }
}
