// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** The ends of the measures, and ties. */
class MeasuresTest {

    private static final Judgements TWO = new Judgements(Map.of("a", 1, "b", 1, "c", 0));

    @Test
    void nothingFoundIsNought() {
        var none = new Ranking(List.of());
        assertEquals(0, Measures.ndcg(none, TWO, 10) + Measures.averagePrecision(none, TWO)
                + Measures.recall(none, TWO, 10) + Measures.reciprocalRank(none, TWO));
    }

    @Test
    void nothingRelevantIsNoughtAndNotANumber() {
        var found = new Ranking(List.of("c"));
        var nothing = new Judgements(Map.of("c", 0));
        assertEquals(0, Measures.ndcg(found, nothing, 10) + Measures.averagePrecision(found, nothing)
                + Measures.recall(found, nothing, 10));
    }

    @Test
    void whatIsBelowTheCutDoesNotCount() {
        assertEquals(0.5, Measures.recall(new Ranking(List.of("a", "c", "b")), TWO, 2));
    }

    @Test
    void theCutShortensTheIdealAsWell() {
        assertEquals(1, Measures.ndcg(new Ranking(List.of("a", "c")), TWO, 1));
    }

    @Test
    void theBestOrderIsOne() {
        assertEquals(1, Measures.ndcg(new Ranking(List.of("b", "a")), TWO, 10), 1e-15);
        assertEquals(1, Measures.averagePrecision(new Ranking(List.of("b", "a")), TWO), 1e-15);
    }

    @Test
    void aNegativeGradeIsWorthNothing() {
        assertEquals(0, CumulatedGain.USUAL.of(List.of(-2), 1));
        assertEquals(0, new CumulatedGain(Gain.EXPONENTIAL, Discount.NONE).of(List.of(-1), 1));
    }

    /** The rule of trec_eval, from memory. */
    @Test
    void tiesAreOrderedByIdGreatestFirstHoweverTheyCame() {
        var found = List.of(new Ranked("d1", 1), new Ranked("d3", 1), new Ranked("d0", 2), new Ranked("d2", 1));
        assertEquals(new Ranking(List.of("d0", "d3", "d2", "d1")), Ranking.of(found));
    }

    @Test
    void aDocumentFoundTwiceCountsOnce() {
        assertEquals(List.of("a", "b"), Ranking.of(List.of(new Ranked("a", 3), new Ranked("b", 2), new Ranked("a", 1))).ids());
    }
}
