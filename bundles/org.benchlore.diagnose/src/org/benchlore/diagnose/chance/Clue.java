// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.chance;

import java.util.Map;

/**
 * Something that was found. Given the faults that are there, its chance is
 * {@code (1 - (1 - stray) * product over shows (1 - w)) * product over denies (1 - d)}: any fault that shows it is
 * enough, each in its own right ('noisy or', Pearl 1988, from memory). Where nothing shows it the first factor is 1.
 *
 * @param id what it is called
 * @param stray chance that it is there without any known fault, above 0
 * @param shows faults that show it, each with the chance that it does, 0 to 1
 * @param denies faults that it speaks against, each with how strongly, 0 up to but not 1
 */
public record Clue(String id, double stray, Map<String, Double> shows, Map<String, Double> denies) {

    /** Copies the maps and refuses figures that are no chances. */
    public Clue {
        shows = Map.copyOf(shows);
        denies = Map.copyOf(denies);
        if (!(stray > 0 && stray <= 1) || !shows.values().stream().allMatch(weight -> weight >= 0 && weight <= 1)
                || !denies.values().stream().allMatch(weight -> weight >= 0 && weight < 1)) {
            throw new IllegalArgumentException(id + " has a weight that is no chance");
        }
    }

    boolean isShown() {
        return !shows.isEmpty();
    }

    double shownBy(String suspect) {
        return shows.getOrDefault(suspect, 0.0);
    }

    double left(String suspect) {
        return 1 - denies.getOrDefault(suspect, 0.0);
    }
}
