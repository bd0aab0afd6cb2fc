// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

/** The usual measures of one ranking, each from 0 to 1; 0 where nothing is relevant or nothing was found. */
public final class Measures {

    private Measures() {
    }

    /**
     * Normalised discounted cumulated gain with linear gain; the ideal comes from all judged documents.
     *
     * @param ranking what was found
     * @param judgements what is relevant
     * @param cut how many ranks count
     * @return nDCG@cut
     */
    public static double ndcg(Ranking ranking, Judgements judgements, int cut) {
        return CumulatedGain.USUAL.normalised(judgements.of(ranking), judgements.all(), cut);
    }

    /**
     * Mean of the precision at the rank of each relevant document; those not found count as 0.
     *
     * @param ranking what was found
     * @param judgements what is relevant
     * @return average precision
     */
    public static double averagePrecision(Ranking ranking, Judgements judgements) {
        double sum = 0;
        int seen = 0;
        for (int i = 0; i < ranking.ids().size(); i++) {
            if (judgements.grade(ranking.ids().get(i)) >= 1) {
                sum += (double) ++seen / (i + 1);
            }
        }
        return share(sum, judgements.relevant());
    }

    /**
     * Share of the relevant documents among the first ones found.
     *
     * @param ranking what was found
     * @param judgements what is relevant
     * @param cut how many ranks count
     * @return recall@cut
     */
    public static double recall(Ranking ranking, Judgements judgements, int cut) {
        return share(hits(ranking.top(cut), judgements, 1), judgements.relevant());
    }

    /**
     * Share of relevant documents in the first ranks, empty ranks counting as misses.
     *
     * @param ranking what was found
     * @param judgements what is relevant
     * @param cut how many ranks count
     * @param grade least grade that counts
     * @return precision@cut
     */
    public static double precision(Ranking ranking, Judgements judgements, int cut, int grade) {
        return share(hits(ranking.top(cut), judgements, grade), cut);
    }

    /**
     * One divided by the rank of the first relevant document.
     *
     * @param ranking what was found
     * @param judgements what is relevant
     * @return reciprocal rank
     */
    public static double reciprocalRank(Ranking ranking, Judgements judgements) {
        int first = judgements.of(ranking).stream().map(grade -> grade >= 1).toList().indexOf(true);
        return first < 0 ? 0 : 1.0 / (first + 1);
    }

    private static double hits(Ranking ranking, Judgements judgements, int grade) {
        return judgements.of(ranking).stream().filter(found -> found >= grade).count();
    }

    private static double share(double part, int whole) {
        return whole == 0 ? 0 : part / whole;
    }
}
