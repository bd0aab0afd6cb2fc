// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a note holds and what it could hold, each under a number that stays the same as long as it is there, so that the
 * key for it does not change while somebody types.
 */
public final class Chips {

    private final Map<Proposal, Integer> numbers = new LinkedHashMap<>();

    /**
     * One value.
     *
     * @param number from 1, the lowest that was free
     * @param value what it is
     * @param isIn true if the note holds it, false if it is only proposed
     */
    public record Chip(int number, Proposal value, boolean isIn) {
    }

    /**
     * Looks at what there is now.
     *
     * @param in what the note holds
     * @param proposed what it could hold as well
     * @return all of them by number
     */
    public List<Chip> update(List<Proposal> in, List<Proposal> proposed) {
        var all = new LinkedHashSet<>(in);
        all.addAll(proposed);
        numbers.keySet().retainAll(all);
        all.forEach(one -> numbers.computeIfAbsent(one, key -> free()));
        var chips = new ArrayList<Chip>();
        numbers.forEach((value, number) -> chips.add(new Chip(number, value, in.contains(value))));
        chips.sort(Comparator.comparing(Chip::number));
        return List.copyOf(chips);
    }

    private int free() {
        int number = 1;
        while (numbers.containsValue(number)) {
            number++;
        }
        return number;
    }

    /**
     * Returns what stands under a number.
     *
     * @param number a number
     * @return the value, or empty
     */
    public Optional<Proposal> at(int number) {
        return numbers.entrySet().stream().filter(entry -> entry.getValue() == number).map(Map.Entry::getKey).findFirst();
    }
}
