// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.evidence.Event.Course;
import org.benchlore.model.Address;
import org.benchlore.store.KindFacts.Left;
import org.benchlore.store.KindFacts.Renewal;
import org.benchlore.store.Row;

/** What became of one component of one unit, job after job: when it was left in, when renewed, and how that went. */
final class UnitHistory {

    private static final String CLOSED = "CLOSED";

    private final List<Row> jobs;
    private final Address component;
    private final Blame blame;
    private final List<Address> fitting;
    private final LocalDate end;
    private final List<Event> left = new ArrayList<>();
    private final List<Event> renewed = new ArrayList<>();
    private Optional<Address> inPlace = Optional.empty();

    /**
     * Reads the history.
     *
     * @param jobs the dated jobs of one unit, oldest first
     * @param component the component
     * @param blame tells what failed
     * @param fitting parts that fit the component, as far as written
     * @param end today, or the day until which the unit was kept
     */
    UnitHistory(List<Row> jobs, Address component, Blame blame, List<Address> fitting, LocalDate end) {
        this.jobs = jobs;
        this.component = component;
        this.blame = blame;
        this.fitting = fitting;
        this.end = end;
        for (int i = 0; i < jobs.size(); i++) {
            if (isDealtWith(jobs.get(i))) {
                read(i);
            }
        }
    }

    List<Event> left() {
        return left;
    }

    List<Event> renewed() {
        return renewed;
    }

    /** Returns the number of the part that is in the unit now, where a job says so. */
    Optional<Address> partNow() {
        return inPlace;
    }

    private void read(int index) {
        var row = jobs.get(index);
        var facts = Blame.facts(row);
        var renewals = facts.renewals().stream().filter(one -> one.component().equals(component)).toList();
        var old = facts.leftIn().stream().filter(one -> one.component().equals(component) && one.confirmed())
                .findFirst();
        old.ifPresent(one -> leftIn(index, one, renewals));
        for (int i = 0; i < renewals.size(); i++) {
            inPlace = number(renewals.get(i));
            if (i == renewals.size() - 1) {
                add(renewed, follow(index, blame::renewedFailed), row);
            } else if (renewals.get(i + 1).again() && atFault(row)) {
                renewed.add(event(row, row, Course.AT_ONCE));
            }
        }
    }

    private void leftIn(int index, Left old, List<Renewal> renewals) {
        var row = jobs.get(index);
        inPlace = old.part().or(() -> inPlace);
        if (!renewals.isEmpty() && renewals.get(0).again() && atFault(row)) {
            left.add(event(row, row, Course.AT_ONCE));
        } else if (renewals.isEmpty()) {
            add(left, follow(index, blame::leftInFailed), row);
        }
    }

    /** A job that was not handed back yet says nothing, unless it failed all the same. */
    private static void add(List<Event> events, Event event, Row job) {
        if (event.course() != Course.HELD || job.status().equals(CLOSED) || Blame.facts(job).closed().isPresent()) {
            events.add(event);
        }
    }

    /** What had to be renewed after the strip was closed is at fault unless the job names something else for it. */
    private boolean atFault(Row row) {
        var facts = Blame.facts(row);
        return blame.names(row, component) || facts.failed().isEmpty() && (blame.isSilent(row)
                || facts.renewals().stream().filter(Renewal::again).map(Renewal::component).distinct().count() == 1);
    }

    /** Follows a job until trouble, the next time the component was dealt with, or the end. */
    private Event follow(int index, Trouble trouble) {
        var row = jobs.get(index);
        for (var later : jobs.subList(index + 1, jobs.size())) {
            if (trouble.shows(row, later, component)) {
                return event(row, later, Course.LATER);
            }
            if (isDealtWith(later)) {
                return event(row, later, Course.HELD);
            }
        }
        return new Event(row.path(), unit(row), inPlace, from(row), end, Course.HELD);
    }

    /** Tells whether a job renewed the component or left it in; asked often, so without making lists. */
    private boolean isDealtWith(Row job) {
        var facts = Blame.facts(job);
        for (var one : facts.renewals()) {
            if (one.component().equals(component)) {
                return true;
            }
        }
        for (var one : facts.leftIn()) {
            if (one.confirmed() && one.component().equals(component)) {
                return true;
            }
        }
        return false;
    }

    private Event event(Row row, Row until, Course course) {
        return new Event(row.path(), unit(row), inPlace, from(row), until.date().orElseThrow(), course);
    }

    private static LocalDate from(Row row) {
        return Blame.facts(row).closed().or(row::date).orElseThrow();
    }

    private static Address unit(Row row) {
        return Blame.facts(row).unit().orElseThrow();
    }

    /** Of the parts fitted it is the one that fits; a part alone that nobody listed is it as well. */
    private Optional<Address> number(Renewal renewal) {
        var fits = renewal.fitted().stream().filter(fitting::contains).findFirst();
        return fits.isPresent() || renewal.fitted().size() != 1 ? fits : Optional.of(renewal.fitted().get(0));
    }

    /** Tells whether a later job shows trouble with what an earlier one did. */
    private interface Trouble {
        boolean shows(Row earlier, Row later, Address component);
    }
}
