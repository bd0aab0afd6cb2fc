// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The measures against worked examples that others published. "Computed" means that the page gives the input and the
 * figure, or its rounding, was worked out anew by hand.
 */
class PublishedExamplesTest {

    private static final CumulatedGain EXPONENTIAL = new CumulatedGain(Gain.EXPONENTIAL, Discount.FROM_THE_FIRST);
    private static final int ALL = 100;

    static Stream<Arguments> gradesOfARanking() {
        return Stream.of(
                Arguments.of("evret documentation, ranks 3 and 5 relevant of 3 in all; read and computed",
                        CumulatedGain.USUAL, List.of(0, 0, 1, 0, 1), List.of(1, 1, 1), 0.8869, 2.1309, 0.4162, 5e-5),
                Arguments.of("justaaa, article on nDCG, linear; read and computed (the page prints .912)",
                        CumulatedGain.USUAL, List.of(4, 3, 1, 0, 3, 2, 1, 4, 0, 2), null, 10.43908, 11.45067, 0.911657, 5e-6),
                Arguments.of("justaaa, the same grades with exponential gain; computed",
                        EXPONENTIAL, List.of(4, 3, 1, 0, 3, 2, 1, 4, 0, 2), null, 29.62560, 33.85666, 0.875030, 5e-6),
                Arguments.of("systemoverflow, lesson on nDCG; read and computed",
                        CumulatedGain.USUAL, List.of(3, 2, 3, 0, 1), null, 6.14871, 6.32347, 0.972364, 5e-6),
                Arguments.of("Wikipedia, Discounted cumulative gain; from memory and computed",
                        CumulatedGain.USUAL, List.of(3, 2, 3, 0, 1, 2), null, 6.861127, 7.140995, 0.960808, 5e-7),
                Arguments.of("Wikipedia, the same with two more judged documents that were not found; from memory and computed",
                        CumulatedGain.USUAL, List.of(3, 2, 3, 0, 1, 2), List.of(3, 2, 3, 0, 1, 2, 3, 2), 6.861127, 8.740262,
                        0.785002, 5e-7),
                Arguments.of("scikit-learn, doctest of ndcg_score: input read, figure from memory and computed; the ranking"
                        + " is 5 1 0 0 10 by descending score", CumulatedGain.USUAL, List.of(5, 1, 0, 0, 10), null,
                        9.499458, 13.654648, 0.695694, 5e-6));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("gradesOfARanking")
    void gainIsCumulatedAndNormalised(String source, CumulatedGain how, List<Integer> grades, List<Integer> judged,
            double dcg, double ideal, double ndcg, double within) {
        var all = judged == null ? grades : judged;
        int cut = grades.size();
        assertEquals(dcg, how.of(grades, cut), within, source);
        assertEquals(ideal, how.ideal(all, cut), within, source);
        assertEquals(ndcg, how.normalised(grades, all, cut), within, source);
    }

    /** Järvelin and Kekäläinen 2002, their example vector; from memory and computed, rounded to two places. */
    @Test
    void theExampleVectorOf2002IsCumulated() {
        var grades = List.of(3, 2, 3, 0, 0, 1, 2, 2, 3, 0);
        assertArrayEquals(new double[] {3, 5, 8, 8, 8, 9, 11, 13, 16, 16},
                upTo(new CumulatedGain(Gain.LINEAR, Discount.NONE), grades), 1e-9);
        assertArrayEquals(new double[] {3, 5, 6.89, 6.89, 6.89, 7.28, 7.99, 8.66, 9.61, 9.61},
                upTo(new CumulatedGain(Gain.LINEAR, Discount.FROM_THE_SECOND), grades), 0.005);
    }

    private static double[] upTo(CumulatedGain how, List<Integer> grades) {
        return IntStream.rangeClosed(1, grades.size()).mapToDouble(cut -> how.of(grades, cut)).toArray();
    }

    /** README of ir_measures; read and computed. */
    @Test
    void theExampleOfIrMeasuresComesOut() {
        var first = Ranking.of(List.of(new Ranked("D0", 1.2), new Ranked("D1", 1.0)));
        var second = Ranking.of(List.of(new Ranked("D0", 2.4), new Ranked("D3", 3.6)));
        var ofFirst = new Judgements(Map.of("D0", 0, "D1", 1));
        var ofSecond = new Judgements(Map.of("D0", 0, "D3", 2));
        assertArrayEquals(new double[] {0.5, 0.5, 0.6309297535714575}, values(first, ofFirst), 1e-15);
        assertArrayEquals(new double[] {1, 1, 1}, values(second, ofSecond), 1e-15);
        assertEquals(0.8154648767857288, (Measures.ndcg(first, ofFirst, 10) + Measures.ndcg(second, ofSecond, 10)) / 2, 1e-15);
        assertEquals(0.05,
                (Measures.precision(first, ofFirst, 10, 2) + Measures.precision(second, ofSecond, 10, 2)) / 2, 1e-15);
    }

    private static double[] values(Ranking ranking, Judgements judgements) {
        return new double[] {Measures.averagePrecision(ranking, judgements), Measures.reciprocalRank(ranking, judgements),
            Measures.ndcg(ranking, judgements, 10)};
    }

    /** Wikipedia, Mean reciprocal rank, after Voorhees, TREC-8: first relevant at 3, 2 and 1; read. */
    @Test
    void theMeanReciprocalRankOfTheThreeWordsIsElevenEighteenths() {
        double sum = IntStream.of(3, 2, 1).mapToDouble(rank -> Measures.reciprocalRank(ranking(10), relevantAt(0, rank))).sum();
        assertEquals(11.0 / 18, sum / 3, 1e-15);
    }

    /** An exercise with ten found and seven relevant in all: the question was read, its answers were computed. */
    @Test
    void theExerciseWithTwoMissedDocumentsComesOut() {
        var ranking = ranking(10);
        var judgements = relevantAt(2, 1, 3, 4, 6, 9);
        double precision = Measures.precision(ranking, judgements, 10, 1);
        double recall = Measures.recall(ranking, judgements, 10);
        assertEquals(0.5, precision, 1e-15);
        assertEquals(0.714286, recall, 5e-7);
        assertEquals(0.588235, 2 * precision * recall / (precision + recall), 5e-7);
        assertEquals(0.519841, Measures.averagePrecision(ranking, judgements), 5e-7);
        assertEquals(0.711356, Measures.ndcg(ranking, judgements, 10), 5e-7);
    }

    private static Ranking ranking(int length) {
        return new Ranking(IntStream.rangeClosed(1, length).mapToObj(rank -> "at" + rank).toList());
    }

    private static Judgements relevantAt(int missed, int... ranks) {
        var grades = new HashMap<String, Integer>();
        IntStream.of(ranks).forEach(rank -> grades.put("at" + rank, 1));
        IntStream.range(0, missed).forEach(number -> grades.put("missed" + (ALL + number), 1));
        return new Judgements(grades);
    }
}
