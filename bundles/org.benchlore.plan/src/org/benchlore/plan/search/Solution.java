// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * The cheapest plan, or the best one found before the search was cut off.
 *
 * @param sittings in order; empty if nothing needs an access
 * @param anywhere chosen way of each target that needs nothing open
 * @param closings closing works, each once, by id
 * @param cost its cost in cents
 * @param bound no plan costs less, in cents; equal to the cost if it is the cheapest
 * @param branches how many branches the search looked at
 */
public record Solution(List<Sitting> sittings, SortedMap<String, String> anywhere, List<String> closings, long cost,
        long bound, long branches) {

    /** Whether no cheaper plan exists. */
    public boolean isExact() {
        return cost == bound;
    }

    /** By how much a cheaper plan could at most be cheaper, in cents. */
    public long gap() {
        return cost - bound;
    }

    /** Every access that is opened, in order; one that is opened twice stands there twice. */
    public List<String> openings() {
        return sittings.stream().flatMap(sitting -> sitting.opened().stream()).toList();
    }

    /** Accesses that are opened a second time or after they were open at the start. */
    public List<String> reopened(List<String> openAtStart) {
        return Stream.concat(openAtStart.stream(), openings().stream()).filter(id ->
                openings().stream().filter(id::equals).count() + (openAtStart.contains(id) ? 1 : 0) > 1)
                .distinct().sorted().toList();
    }
}
