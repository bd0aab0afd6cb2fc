// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.book.CaseNote.Day;
import org.benchlore.diagnose.book.Family.Relative;
import org.benchlore.model.Address;
import org.benchlore.store.KindFacts;
import org.benchlore.store.Row;

/**
 * A job record as ranking causes needs it, from its facts alone.
 *
 * @param address where it stands
 * @param title what it is called
 * @param cause the cause found
 * @param day unit and day
 * @param refers everything it refers to
 * @param done procedures done
 * @param renewed components renewed
 * @param relative the other machine of the family it was done on, empty if it was this one
 * @param isUnderWay whether it is not closed yet
 */
public record CaseJob(Address address, String title, Optional<Address> cause, Optional<Day> day, Set<Address> refers,
        Set<Address> done, Set<Address> renewed, Optional<Relative> relative, boolean isUnderWay) {

    private static final Set<String> UNDER_WAY = Set.of("OPEN", "WAITING_FOR_PARTS", "WAITING_FOR_ANSWER");

    static CaseJob of(Row row, Family family, Optional<Relative> relative) {
        var facts = row.job();
        var day = row.date().flatMap(date -> facts.flatMap(KindFacts.JobFacts::unit).map(unit -> new Day(unit, date)));
        return new CaseJob(row.address(), row.title(), row.cause().flatMap(family::own), day, Set.copyOf(row.references()),
                facts.map(job -> Set.copyOf(job.done())).orElse(Set.of()),
                facts.map(job -> Set.copyOf(job.renewed())).orElse(Set.of()), relative, isUnderWay(row));
    }

    /** What it counts for beside one on this machine. */
    double weight() {
        return relative.map(Relative::weight).orElse(1.0);
    }

    /** A record that nobody gave a state is an old one, and done with. */
    private static boolean isUnderWay(Row row) {
        return UNDER_WAY.contains(row.status()) && row.job().flatMap(KindFacts.JobFacts::closed).isEmpty();
    }

    /**
     * Tells whether it is evidence for a case: one under way is none before its cause is found, and never for the unit it is
     * about, whose case it is.
     *
     * @param unit the unit asked about
     * @return true if it counts
     */
    boolean isEvidence(Optional<Address> unit) {
        return !isUnderWay || cause.isPresent() && day.filter(it -> unit.filter(it.unit()::equals).isPresent()).isEmpty();
    }
}
