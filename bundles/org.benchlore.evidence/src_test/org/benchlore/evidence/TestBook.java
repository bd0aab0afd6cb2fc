// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.KindFacts;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.KindFacts.Left;
import org.benchlore.store.KindFacts.MachineFacts;
import org.benchlore.store.KindFacts.NoteFacts;
import org.benchlore.store.KindFacts.PartFacts;
import org.benchlore.store.KindFacts.Renewal;
import org.benchlore.store.KindFacts.Sighting;
import org.benchlore.store.KindFacts.Tally;
import org.benchlore.store.KindFacts.UnitFacts;
import org.benchlore.store.Row;

/** Rows of a small invented library, made without files. */
final class TestBook {

    static final String MACHINE = "machines/lorry.xmi";
    static final Address ACTUATOR = new Address(MACHINE, "actuator");
    static final Address PLATES = new Address(MACHINE, "plates");
    static final Address CAUSE = new Address(MACHINE, "actuator-sticks");
    static final Address OLD = part("old");
    static final Address NEW = part("new");
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final Map<String, Row> rows = new LinkedHashMap<>();

    TestBook() {
        machine("lorry", "HL", Map.of("actuator", List.of(OLD), "plates", List.of(part("kit"))));
    }

    static Address part(String id) {
        return new Address(Kind.PART.path(id), id);
    }

    static Address unit(String id) {
        return new Address(Kind.UNIT.path(id), id);
    }

    static Address component(String machine, String id) {
        return new Address(Kind.MACHINE.path(machine), id);
    }

    Stream<Row> rows() {
        return rows.values().stream();
    }

    Evidence evidence() {
        return new Evidence(rows());
    }

    Findings ask(Question question) {
        return evidence().about(question, CountingRules.usual());
    }

    Findings ask() {
        return ask(Question.of(ACTUATOR, TODAY));
    }

    TestBook machine(String id, String family, Map<String, List<Address>> parts) {
        var inner = new java.util.HashSet<>(parts.keySet());
        inner.add(CAUSE.id());
        return put(row(Kind.MACHINE, id, "", Optional.empty(), Optional.empty(), List.of(), inner,
                new MachineFacts(family, Map.of(CAUSE.id(), "actuator"), parts)));
    }

    TestBook supersede(Address before, Address after) {
        put(row(Kind.PART, before.id(), "SUPERSEDED", Optional.empty(), Optional.empty(), List.of(), Set.of(),
                new PartFacts(Optional.of(after), Optional.empty())));
        return put(row(Kind.PART, after.id(), "", Optional.empty(), Optional.empty(), List.of(), Set.of(),
                new PartFacts(Optional.empty(), Optional.empty())));
    }

    TestBook kept(String unit, int year) {
        return put(row(Kind.UNIT, unit, "", Optional.empty(), Optional.empty(), List.of(), Set.of(),
                new UnitFacts(year)));
    }

    TestBook tally(String id, LocalDate date, String status, Tally tally) {
        return put(row(Kind.NOTE, id, status, Optional.ofNullable(date), Optional.empty(), List.of(ACTUATOR), Set.of(),
                new NoteFacts(Optional.empty(), Optional.of(ACTUATOR), Optional.empty(), Optional.of(tally))));
    }

    static Tally seen(int count, int ofAbout, int since, Sighting... sightings) {
        return new Tally(count, ofAbout, since, List.of(sightings));
    }

    TestBook put(Row row) {
        rows.put(row.path(), row);
        return this;
    }

    static Row row(Kind kind, String id, String status, Optional<LocalDate> date, Optional<Address> cause,
            List<Address> components, Set<String> inner, KindFacts facts) {
        return new Row(new Address(kind.path(id), id), kind, id, status, date, true, List.of(), components, List.of(),
                List.of(), List.of(), cause, List.of(), inner, Optional.of(facts), 0);
    }

    /** Begins a job that was handed back on the day it was opened. */
    Job job(String id, String unit, String day) {
        return new Job(id, unit, LocalDate.parse(day));
    }

    /** A job in the making; {@link #add} puts it into the book. */
    final class Job {
        private final String id;
        private final Optional<Address> unit;
        private final Optional<LocalDate> opened;
        private Optional<LocalDate> closed;
        private String status = "CLOSED";
        private Optional<Address> cause = Optional.empty();
        private final List<Renewal> renewed = new ArrayList<>();
        private final List<Left> left = new ArrayList<>();
        private final List<Address> failed = new ArrayList<>();
        private Optional<Address> comebackOf = Optional.empty();
        private String reason = "NOT_RECORDED";

        Job(String id, String unit, LocalDate day) {
            this.id = "job-2020-" + id;
            this.unit = Optional.of(unit(unit));
            this.opened = Optional.of(day);
            this.closed = opened;
        }

        Job renew(Address component, Address... fitted) {
            renewed.add(new Renewal(component, List.of(fitted), false));
            return this;
        }

        Job renewAgain(Address component, Address... fitted) {
            renewed.add(new Renewal(component, List.of(fitted), true));
            return this;
        }

        Job left(Address component) {
            left.add(new Left(component, Optional.empty(), true));
            return this;
        }

        Job left(Address component, Address part) {
            left.add(new Left(component, Optional.of(part), true));
            return this;
        }

        Job proposed(Address component) {
            left.add(new Left(component, Optional.empty(), false));
            return this;
        }

        Job failed(Address component) {
            failed.add(component);
            return this;
        }

        Job cause(Address found) {
            cause = Optional.of(found);
            return this;
        }

        Job closed(String day) {
            closed = Optional.of(LocalDate.parse(day));
            return this;
        }

        Job open() {
            status = "WAITING_FOR_PARTS";
            closed = Optional.empty();
            return this;
        }

        Job comebackOf(String job, String why) {
            comebackOf = Optional.of(new Address(Kind.JOB.path("job-2020-" + job), "job-2020-" + job));
            reason = why;
            return this;
        }

        Row row() {
            return TestBook.row(Kind.JOB, id, status, opened, cause, List.of(), Set.of(), new JobFacts(unit, List.of(),
                    List.copyOf(renewed), List.copyOf(left), List.copyOf(failed), "", closed, comebackOf, reason));
        }

        TestBook add() {
            return put(row());
        }
    }
}
