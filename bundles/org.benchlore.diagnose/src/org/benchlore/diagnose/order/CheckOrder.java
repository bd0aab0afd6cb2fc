// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of checks with the least expected time until the fault is found, if one fault is there and a check finds
 * what it is for. Expected time = sum over the checks of (time with what must still be opened) x (chance that none
 * before found it); without shared opening the best order is by chance over time (Kadane and Simon 1977). Exact by
 * dynamic programming over sets up to {@link #EXACT} checks; of more, the others follow by chance over time.
 */
public final class CheckOrder {

    /** So many checks are put in the best order exactly. */
    public static final int EXACT = 12;

    private final List<Check> checks;
    private final AccessCost access;
    private final Map<String, Double> chances;

    /**
     * Makes an order.
     *
     * @param checks the checks, in any order
     * @param access what opening costs
     * @param chances how likely each fault is, together at most 1
     */
    public CheckOrder(List<Check> checks, AccessCost access, Map<String, Double> chances) {
        this.checks = checks.stream().sorted(Comparator.comparing(Check::id)).toList();
        this.access = access;
        this.chances = Map.copyOf(chances);
    }

    /**
     * Returns the best order; urgent checks stand before all others.
     *
     * @return the checks
     */
    public List<Check> best() {
        var worthFirst = checks.stream().sorted(Comparator.comparing(Check::urgent).reversed()
                .thenComparing(this::worth, Comparator.reverseOrder())).toList();
        var exact = worthFirst.subList(0, Math.min(EXACT, worthFirst.size())).stream()
                .sorted(Comparator.comparing(Check::id)).toList();
        var order = new ArrayList<>(new ExactOrder(exact, access, chances).order());
        order.addAll(worthFirst.subList(exact.size(), worthFirst.size()));
        return List.copyOf(order);
    }

    /**
     * Returns the checks by what they find, the likeliest first, as somebody does who only looks at chances.
     *
     * @return the checks
     */
    public List<Check> likeliestFirst() {
        return checks.stream().sorted(Comparator.comparing((Check check) -> chance(check.finds())).reversed()).toList();
    }

    /**
     * Returns the checks by time with their opening, the shortest first, as somebody does who only looks at the clock.
     *
     * @return the checks
     */
    public List<Check> shortestFirst() {
        return checks.stream().sorted(Comparator.comparing(this::alone)).toList();
    }

    /**
     * Returns the time of a check by itself.
     *
     * @param check a check
     * @return minutes with all it must open
     */
    public double alone(Check check) {
        return check.minutes() + access.minutes(check.opens());
    }

    private double worth(Check check) {
        return chance(check.finds()) / alone(check);
    }

    /**
     * Returns how likely it is that one of these faults is the one.
     *
     * @param faults ids
     * @return a chance
     */
    public double chance(Set<String> faults) {
        return faults.stream().sorted().mapToDouble(fault -> chances.getOrDefault(fault, 0.0)).sum();
    }

    /**
     * Returns what each check of an order takes, its opening counted where it is needed first.
     *
     * @param order checks
     * @return minutes, one for each check
     */
    public List<Double> added(List<Check> order) {
        var opened = new HashSet<String>();
        var minutes = new ArrayList<Double>();
        var before = access.minutes(Set.of());
        for (var check : order) {
            opened.addAll(check.opens());
            var after = access.minutes(opened);
            minutes.add(check.minutes() + after - before);
            before = after;
        }
        return List.copyOf(minutes);
    }

    /**
     * Returns the expected time of an order.
     *
     * @param order checks
     * @return minutes
     */
    public double expected(List<Check> order) {
        var added = added(order);
        var found = new HashSet<String>();
        var sum = 0.0;
        for (int i = 0; i < order.size(); i++) {
            sum += added.get(i) * (1 - chance(found));
            found.addAll(order.get(i).finds());
        }
        return sum;
    }
}
