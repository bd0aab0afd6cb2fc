// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountWordsTest {

    private static Findings findings(int failed, int of, Prior prior) {
        var counts = new Counts(failed, of, failed, of, 0, 0, 0, 0);
        var estimate = prior.estimate(CountingRules.usual()).with(failed, of);
        return new Findings(counts, prior, estimate, Counts.NONE, Estimate.unknown());
    }

    private static Prior tally(int count, int ofAbout) {
        return new Prior.Tally(TestBook.part("any"), count, ofAbout);
    }

    /** Under three cases the count, never a rate (design). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0 | 3 | none of 3 of ours", "1 | 70 | 1 of 70 of ours", "2 | 5 | 2 of 5 of ours",
        "3 | 41 | about 1 in 14 of ours (3 of 41)", "12 | 20 | about 6 in 10 of ours (12 of 20)"})
    void fewAreACountAndManyARate(int failed, int of, String words) {
        assertEquals(words, CountWords.of(findings(failed, of, new Prior.Nothing())));
    }

    @Test
    void aTallyIsAbout() {
        assertEquals("1 of about 70 of ours", CountWords.of(findings(0, 0, tally(1, 70))));
        assertEquals("about 1 in 16 of ours (4 of about 62)", CountWords.of(findings(1, 22, tally(3, 40))));
    }

    @Test
    void nothingIsSaidToBeNothing() {
        assertEquals("nothing is recorded", CountWords.of(findings(0, 0, new Prior.Nothing())));
        assertEquals("about 1 in 5 by its life data", CountWords.of(findings(0, 0, new Prior.Figure(0.2, true))));
    }

    @ParameterizedTest
    @CsvSource({"0.0142857, about 1 in 70", "0.2673, about 1 in 4", "0.3139, about 1 in 3", "0.35, about 1 in 3",
        "0.36, about 4 in 10", "0.5, about 5 in 10", "0.96, nearly always", "0.94, about 9 in 10",
        "0.0009, less than 1 in 1000", "0.001, about 1 in 1000", "0.0066, about 1 in 150", "0.0101, about 1 in 99",
        "0.01, about 1 in 100"})
    void aChanceIsOneInSoMany(double chance, String words) {
        assertEquals(words, CountWords.oneIn(chance));
    }

    @Test
    void whatWasPassedOverIsSaid() {
        assertEquals(List.of("1 job not followed long enough yet", "2 jobs that are the cases the note counts",
                "3 jobs with another part number", "4 jobs where nobody wrote the part number"),
                CountWords.passedOver(new Counts(0, 0, 0, 0, 1, 2, 3, 4)));
        assertEquals(List.of(), CountWords.passedOver(Counts.NONE));
    }
}
