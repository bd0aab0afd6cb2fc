// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;

/** The invented notes are what the page of targets describes. */
class CorpusTest {

    private static final Corpus CORPUS = Corpus.of(600, 1);

    @Test
    void theSameSeedGivesTheSameNotes() {
        assertEquals(CORPUS, Corpus.of(600, 1));
        assertNotEquals(CORPUS, Corpus.of(600, 2));
    }

    @Test
    void aNoteHasSixtyToAHundredAndTwentyWords() {
        var lengths = CORPUS.notes().stream().mapToInt(note -> note.text().split(" ").length).summaryStatistics();
        assertTrue(lengths.getMin() >= 60 && lengths.getMax() <= 120 && lengths.getMin() < 65 && lengths.getMax() > 115,
                lengths::toString);
    }

    @Test
    void everyThirdNoteHoldsACodeThatIsListedForIt() {
        assertEquals(200, CORPUS.codes().values().stream().mapToInt(java.util.List::size).sum());
        CORPUS.codes().forEach((code, numbers) -> numbers.forEach(number ->
                assertTrue(Arrays.asList(CORPUS.notes().get(number).text().split(" ")).contains(code), code)));
    }

    /** Zipf: the commonest word is about ten times as common as the tenth. */
    @Test
    void wordsAreAsCommonAsZipfSays() {
        var vocabulary = new Vocabulary(1000, new Random(3));
        var random = new Random(4);
        Map<Integer, Integer> seen = new HashMap<>();
        for (int i = 0; i < 200_000; i++) {
            seen.merge(vocabulary.rank(vocabulary.next(random)), 1, Integer::sum);
        }
        assertEquals(10, (double) seen.get(0) / seen.get(9), 0.6);
        assertEquals(100, (double) seen.get(0) / seen.get(99), 15);
    }
}
