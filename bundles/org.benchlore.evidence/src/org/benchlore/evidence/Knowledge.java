// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.KindFacts.MachineFacts;
import org.benchlore.store.KindFacts.NoteFacts;
import org.benchlore.store.KindFacts.PartFacts;
import org.benchlore.store.KindFacts.UnitFacts;
import org.benchlore.store.Row;

/**
 * The facts that counting needs, found by what is asked: jobs by unit, units by component, notes by component. It holds
 * the catalogue's rows themselves. One changed file touches the jobs of one unit and nothing else. Not thread-safe.
 */
final class Knowledge {

    private final Map<String, Row> rows = new HashMap<>();
    private final Map<Address, TreeMap<Moment, Row>> jobs = new HashMap<>();
    /** For each component its units, and for each of these how many jobs touch it. */
    private final Map<Address, Map<Address, Integer>> unitsOf = new HashMap<>();
    private final Map<Address, Map<String, Row>> notes = new HashMap<>();
    private final Map<String, Set<String>> families = new HashMap<>();
    private final Map<Address, Set<Address>> predecessors = new HashMap<>();

    /** The order of a unit's jobs: by day, those of one day by path. */
    private record Moment(java.time.LocalDate day, String path) implements Comparable<Moment> {
        @Override
        public int compareTo(Moment other) {
            int byDay = day.compareTo(other.day);
            return byDay != 0 ? byDay : path.compareTo(other.path);
        }
    }

    void put(Row row) {
        remove(row.path());
        if (row.special().isPresent()) {
            rows.put(row.path(), row);
            change(row, true);
        }
    }

    void remove(String path) {
        var old = rows.remove(path);
        if (old != null) {
            change(old, false);
        }
    }

    private void change(Row row, boolean in) {
        row.job().ifPresent(job -> job(row, job, in));
        row.facts(NoteFacts.class).flatMap(NoteFacts::tally).ifPresent(tally -> note(row, in));
        row.facts(MachineFacts.class).filter(machine -> !machine.family().isEmpty()).ifPresent(machine ->
                change(families, machine.family(), row.path(), in));
        row.facts(PartFacts.class).flatMap(PartFacts::supersededBy).ifPresent(next ->
                change(predecessors, next, row.address(), in));
    }

    private void job(Row row, JobFacts job, boolean in) {
        if (job.unit().isEmpty() || row.date().isEmpty()) {
            return;
        }
        var unit = job.unit().get();
        var moment = new Moment(row.date().get(), row.path());
        if (in) {
            jobs.computeIfAbsent(unit, any -> new TreeMap<>()).put(moment, row);
        } else {
            jobs.computeIfPresent(unit, (any, all) -> {
                all.remove(moment);
                return all.isEmpty() ? null : all;
            });
        }
        touched(job).forEach(component -> unitsOf.compute(component, (any, units) -> count(units, unit, in)));
    }

    private static Set<Address> touched(JobFacts job) {
        var touched = new HashSet<Address>(job.renewed());
        touched.addAll(job.left());
        return touched;
    }

    private static Map<Address, Integer> count(Map<Address, Integer> units, Address unit, boolean in) {
        var counted = units == null ? new HashMap<Address, Integer>() : units;
        counted.merge(unit, in ? 1 : -1, (before, more) -> before + more == 0 ? null : before + more);
        return counted.isEmpty() ? null : counted;
    }

    private void note(Row row, boolean in) {
        for (var component : row.components()) {
            if (in) {
                notes.computeIfAbsent(component, any -> new TreeMap<>()).put(row.path(), row);
            } else {
                notes.getOrDefault(component, Map.of()).remove(row.path());
            }
        }
    }

    private static <K, V> void change(Map<K, Set<V>> map, K key, V value, boolean in) {
        if (in) {
            map.computeIfAbsent(key, any -> new HashSet<>()).add(value);
        } else {
            map.getOrDefault(key, new HashSet<>()).remove(value);
        }
    }

    /** Returns the units on which a job left in or renewed a component. */
    Set<Address> units(Address component) {
        return unitsOf.getOrDefault(component, Map.of()).keySet();
    }

    /** Returns the dated jobs of a unit, oldest first. */
    List<Row> jobs(Address unit) {
        var all = jobs.get(unit);
        return all == null ? List.of() : List.copyOf(all.values());
    }

    /** Returns notes with a tally that speak of a component. */
    Stream<Row> notes(Address component) {
        return notes.getOrDefault(component, Map.of()).values().stream();
    }

    Optional<Address> componentOfCause(Address cause) {
        return machine(cause.path()).map(machine -> machine.causes().get(cause.id()))
                .map(component -> new Address(cause.path(), component));
    }

    /** Returns the parts that fit a component, as far as written. */
    List<Address> parts(Address component) {
        return machine(component.path()).map(machine -> machine.parts().get(component.id())).orElse(List.of());
    }

    /** Returns like components of other machines of the family: with the same id, or fitted with the same number. */
    List<Address> family(Address component) {
        var own = parts(component);
        var family = machine(component.path()).map(MachineFacts::family).orElse("");
        return families.getOrDefault(family, Set.of()).stream().filter(path -> !path.equals(component.path())).sorted()
                .flatMap(path -> like(path, component, own)).toList();
    }

    private Stream<Address> like(String path, Address component, List<Address> own) {
        var parts = machine(path).map(MachineFacts::parts).orElse(Map.of());
        var ids = new java.util.TreeSet<String>();
        parts.forEach((id, fitting) -> {
            if (fitting.stream().anyMatch(own::contains)) {
                ids.add(id);
            }
        });
        if (rows.get(path).innerIds().contains(component.id())) {
            ids.add(component.id());
        }
        return ids.stream().map(id -> new Address(path, id));
    }

    private Optional<MachineFacts> machine(String path) {
        return Optional.ofNullable(rows.get(path)).flatMap(row -> row.facts(MachineFacts.class));
    }

    /** Tells whether a part took the place of another one. */
    boolean isSuccessor(Address part) {
        return !predecessors.getOrDefault(part, Set.of()).isEmpty();
    }

    /** Tells whether a part was replaced by another or took another's place. */
    boolean isInChain(Address part) {
        return isSuccessor(part) || part(part).flatMap(PartFacts::supersededBy).isPresent();
    }

    Optional<PartFacts> part(Address part) {
        return Optional.ofNullable(rows.get(part.path())).flatMap(row -> row.facts(PartFacts.class));
    }

    /** Returns the year until which a unit is kept, 0 if nobody said. */
    int keptUntil(Address unit) {
        return Optional.ofNullable(rows.get(unit.path())).flatMap(row -> row.facts(UnitFacts.class))
                .map(UnitFacts::keptUntil).orElse(0);
    }
}
