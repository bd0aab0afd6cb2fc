// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.benchlore.diagnose.order.AccessCost;
import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.Need;
import org.benchlore.model.Procedure;
import org.benchlore.store.Library;

/**
 * What must be open, and how long opening takes: of several that will do, the one that is opened soonest. Only opening
 * is counted: it is closed once, whatever is found.
 */
public final class Openings {

    private final Library library;
    private final MachineBook book;

    /**
     * Makes the openings of a machine.
     *
     * @param book the machine
     */
    public Openings(MachineBook book) {
        this.library = book.library();
        this.book = book;
    }

    /**
     * Returns all that must be open for a procedure's first way.
     *
     * @param procedure a procedure
     * @return accesses with all they need, each once
     */
    public Set<Access> of(Procedure procedure) {
        return procedure.getWays().stream().findFirst().map(way -> all(way.getNeeds())).orElse(Set.of());
    }

    /**
     * Returns what must be open to look at a component: the nearest opening of what it is part of.
     *
     * @param component a component of the machine
     * @return accesses with all they need, none if nothing must be opened as far as the book tells
     */
    public Set<Access> of(Component component) {
        for (var place : book.upwards(component)) {
            var access = book.accesses().stream()
                    .filter(one -> library.addressOf(one.getComponent()).filter(place::equals).isPresent()).findFirst();
            if (access.isPresent()) {
                return closure(List.of(access.get()));
            }
        }
        return Set.of();
    }

    private Set<Access> all(List<Need> needs) {
        return closure(needs.stream().map(need -> cheapest(need, new HashSet<>())).flatMap(Optional::stream).toList());
    }

    private Set<Access> closure(Collection<Access> wanted) {
        var all = new LinkedHashSet<Access>();
        wanted.forEach(access -> collect(access, all));
        var free = all.stream().flatMap(access -> access.getCovers().stream()).map(this::load).flatMap(Optional::stream)
                .collect(Collectors.toSet());
        all.removeAll(free);
        return all;
    }

    private void collect(Access access, Set<Access> all) {
        if (all.contains(access)) {
            return;
        }
        all.add(access);
        access.getNeeds().forEach(need -> cheapest(need, new HashSet<>(Set.of(access)))
                .ifPresent(one -> collect(one, all)));
    }

    private Optional<Access> cheapest(Need need, Set<Access> above) {
        return need.getAnyOf().stream().map(this::load).flatMap(Optional::stream)
                .min(Comparator.comparingDouble(access -> whole(access, above)));
    }

    /** Time to open one with all it needs; one that needs itself is never the soonest. */
    private double whole(Access access, Set<Access> above) {
        if (!above.add(access)) {
            return Double.MAX_VALUE / 4;
        }
        var sum = minutes(access);
        for (var need : access.getNeeds()) {
            sum += cheapest(need, above).map(one -> whole(one, new HashSet<>(above))).orElse(0.0);
        }
        above.remove(access);
        return sum;
    }

    private Optional<Access> load(Access reference) {
        var place = library.addressOf(reference);
        return book.accesses().stream().filter(one -> library.addressOf(one).equals(place)).findFirst();
    }

    private static double minutes(Access access) {
        var strip = access.getStrip();
        return strip == null || strip.getMinutesUsual() == null ? 0 : strip.getMinutesUsual().minutes();
    }

    /**
     * Returns what opening costs, with more that is shared.
     *
     * @param shared minutes of other things that are done once for several checks, by name
     * @return costs that take each access and each of the others once; accesses are named by their address
     */
    public AccessCost costs(Map<String, Double> shared) {
        var each = book.accesses().stream().filter(access -> library.addressOf(access).isPresent())
                .collect(Collectors.toMap(access -> name(access).toString(), Openings::minutes, (one, other) -> one));
        each.putAll(shared);
        return AccessCost.sum(each);
    }

    Address name(Access access) {
        return library.addressOf(access).orElseThrow();
    }
}
