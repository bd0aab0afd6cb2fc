// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.chance;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How likely each fault is, given what was found, when any number of faults may be there at once and each comes by
 * itself. Exact over all sets of faults: the clues that a set of faults accounts for are followed instead of the sets,
 * by additions only, so that nothing is lost in rounding. Work grows with the faults and with 2 to the number of clues.
 */
public final class FaultModel {

    /** More clues than this are not weighed at once. */
    public static final int MOST_CLUES = 12;

    private final List<Suspect> suspects;
    private final List<Clue> clues;
    private final List<Clue> shown;

    /**
     * Makes a model.
     *
     * @param suspects the faults, each id once
     * @param clues what was found, at most {@link #MOST_CLUES} of them shown by a fault
     */
    public FaultModel(List<Suspect> suspects, List<Clue> clues) {
        this.suspects = List.copyOf(suspects);
        this.clues = List.copyOf(clues);
        this.shown = clues.stream().filter(Clue::isShown).toList();
        if (shown.size() > MOST_CLUES) {
            throw new IllegalArgumentException("At most " + MOST_CLUES + " findings can be weighed at once");
        }
    }

    /**
     * Returns how likely each fault is, whatever else is there.
     *
     * @return chance by id, in the order of the faults
     */
    public Map<String, Double> posterior() {
        var found = new LinkedHashMap<String, Double>();
        for (int i = 0; i < suspects.size(); i++) {
            found.put(suspects.get(i).id(), posterior(i));
        }
        return found;
    }

    /**
     * Returns how likely one fault is, whatever else is there.
     *
     * @param id a fault of the model
     * @return a chance
     */
    public double posterior(String id) {
        for (int i = 0; i < suspects.size(); i++) {
            if (suspects.get(i).id().equals(id)) {
                return posterior(i);
            }
        }
        throw new IllegalArgumentException("There is no fault '" + id + "' in this model");
    }

    private double posterior(int suspect) {
        var with = weight(suspect, true);
        return with / (with + weight(suspect, false));
    }

    /**
     * Returns how likely it was that all this would be found.
     *
     * @return a chance above 0
     */
    public double evidence() {
        return weight(-1, true);
    }

    /** Chance of the clues together with one fault being there, or not; of the clues alone where none is fixed. */
    private double weight(int fixed, boolean present) {
        var explained = new double[1 << shown.size()];
        explained[0] = 1;
        for (int i = 0; i < suspects.size(); i++) {
            explained = take(explained, suspects.get(i), i != fixed || !present, i != fixed || present);
        }
        return total(explained);
    }

    private double[] take(double[] explained, Suspect suspect, boolean mayBeAbsent, boolean mayBePresent) {
        var next = new double[explained.length];
        if (mayBeAbsent) {
            for (int set = 0; set < next.length; set++) {
                next[set] = explained[set] * (1 - suspect.prior());
            }
        }
        if (mayBePresent) {
            var present = present(explained, suspect);
            for (int set = 0; set < next.length; set++) {
                next[set] += present[set];
            }
        }
        return next;
    }

    private double[] present(double[] explained, Suspect suspect) {
        var now = new double[explained.length];
        var share = suspect.prior() * clues.stream().mapToDouble(clue -> clue.left(suspect.id())).reduce(1, (a, b) -> a * b);
        for (int set = 0; set < now.length; set++) {
            now[set] = explained[set] * share;
        }
        for (int clue = 0; clue < shown.size(); clue++) {
            var shows = shown.get(clue).shownBy(suspect.id());
            if (shows > 0) {
                explain(now, 1 << clue, shows);
            }
        }
        return now;
    }

    /** Moves the share of every set that lacks this clue to the set that has it. */
    private static void explain(double[] sets, int clue, double shows) {
        for (int set = 0; set < sets.length; set++) {
            if ((set & clue) == 0) {
                sets[set | clue] += sets[set] * shows;
                sets[set] *= 1 - shows;
            }
        }
    }

    private double total(double[] explained) {
        var sum = 0.0;
        for (int set = 0; set < explained.length; set++) {
            var chance = explained[set];
            for (int clue = 0; clue < shown.size(); clue++) {
                chance *= (set >> clue & 1) == 1 ? 1 : shown.get(clue).stray();
            }
            sum += chance;
        }
        return sum;
    }
}
