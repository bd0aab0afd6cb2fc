// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.chance;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the chances lie if exactly one of the faults is there: Bayes' rule. The order of checks stands on it, because a
 * search ends with the first fault found.
 */
public final class SingleFault {

    private SingleFault() {
    }

    /**
     * Returns the chances of faults of which exactly one is there.
     *
     * @param priors how likely each was, any scale
     * @param likelihoods how likely what was found is under each, as many
     * @return the chances, together 1
     */
    public static double[] posterior(double[] priors, double[] likelihoods) {
        var chances = new double[priors.length];
        var sum = 0.0;
        for (int i = 0; i < priors.length; i++) {
            chances[i] = priors[i] * likelihoods[i];
            sum += chances[i];
        }
        for (int i = 0; i < priors.length; i++) {
            chances[i] /= sum;
        }
        return chances;
    }

    /**
     * Returns the chances of faults of which exactly one is there, from the same faults and clues as the full model.
     *
     * @param suspects the faults
     * @param clues what was found
     * @return chance by id, together 1
     */
    public static Map<String, Double> posterior(List<Suspect> suspects, List<Clue> clues) {
        var odds = suspects.stream().mapToDouble(suspect -> suspect.prior() / (1 - suspect.prior())).toArray();
        var likelihoods = suspects.stream().mapToDouble(suspect -> likelihood(suspect.id(), clues)).toArray();
        var chances = posterior(odds, likelihoods);
        var found = new LinkedHashMap<String, Double>();
        for (int i = 0; i < chances.length; i++) {
            found.put(suspects.get(i).id(), chances[i]);
        }
        return found;
    }

    private static double likelihood(String suspect, List<Clue> clues) {
        return clues.stream().mapToDouble(clue -> clue.left(suspect)
                * (clue.isShown() ? 1 - (1 - clue.stray()) * (1 - clue.shownBy(suspect)) : 1)).reduce(1, (a, b) -> a * b);
    }
}
