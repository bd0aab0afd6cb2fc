// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.book.Family.Relative;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/**
 * A field note as ranking causes needs it.
 *
 * @param address where it stands
 * @param title what it is called
 * @param status how far it is proved
 * @param cause the cause it names
 * @param component the component it names
 * @param codes codes it names
 * @param symptoms symptoms it names
 * @param during procedures during which it was seen
 * @param job the job it comes from
 * @param day where and when it happened, empty where no unit is named
 * @param count how often it was seen, 0 where nobody counted
 * @param of among about how many, 0 where nobody counted
 * @param since since which year, 0 where nobody said
 * @param sightings where and when it was seen again
 * @param finding what was found
 * @param text what was learned
 * @param relative the other machine of the family it speaks of, empty if it speaks of this one
 */
public record CaseNote(Address address, String title, NoteStatus status, Optional<Address> cause,
        Optional<Address> component, Set<Address> codes, List<String> symptoms, Set<Address> during,
        Optional<Address> job, Optional<Day> day, int count, int of, int since, List<Day> sightings, String finding, String text,
        Optional<Relative> relative) {

    private static final long SAME_CASE = 31;

    /**
     * A unit on a day.
     *
     * @param unit the unit
     * @param date the day
     */
    public record Day(Address unit, LocalDate date) {

        /** Whether two papers speak of one case: the same unit within a month. */
        boolean isNear(Day other) {
            return unit.equals(other.unit) && Math.abs(date.toEpochDay() - other.date.toEpochDay()) <= SAME_CASE;
        }
    }

    static CaseNote of(Library library, Address address, FieldNote note, Family family, Optional<Relative> relative) {
        var tally = note.getSeen();
        var sightings = new ArrayList<Day>();
        if (tally != null) {
            tally.getSightings().forEach(one -> day(library, one.getUnit(), one.getDate()).ifPresent(sightings::add));
        }
        int count = tally == null || tally.getCount() == null ? 0 : tally.getCount();
        int of = tally == null || tally.getOfAbout() == null ? 0 : tally.getOfAbout();
        return new CaseNote(address, ElementTitle.of(note), note.getStatus(),
                library.addressOf(note.getCause()).flatMap(family::own),
                library.addressOf(note.getComponent()).flatMap(family::own), addresses(library, note.getCodes()),
                List.copyOf(note.getSymptoms()), addresses(library, note.getDuring()), library.addressOf(note.getJob()),
                day(library, note.getUnit(), note.getDate()), count, Math.max(of, of == 0 ? 0 : count),
                tally == null || tally.getSince() == null ? 0 : tally.getSince(), sightings,
                note.getFinding() == null ? "" : note.getFinding(),
                note.getText() == null ? "" : note.getText(), relative);
    }

    private static Optional<Day> day(Library library, EObject unit, LocalDate date) {
        return date == null ? Optional.empty() : library.addressOf(unit).map(place -> new Day(place, date));
    }

    static Set<Address> addresses(Library library, Collection<? extends EObject> references) {
        var found = new HashSet<Address>();
        references.forEach(reference -> library.addressOf(reference).ifPresent(found::add));
        return Set.copyOf(found);
    }

    /** What a case on it counts for beside one on this machine. */
    double weight() {
        return relative.map(Relative::weight).orElse(1.0);
    }

    /** Whether the note counts how often among how many. */
    boolean isTallied() {
        return of > 0;
    }

    boolean supports() {
        return status != NoteStatus.RULED_OUT && status != NoteStatus.SUPERSEDED;
    }

    /** Whether this note's own count holds a case that another paper speaks of. */
    boolean covers(Optional<Address> otherJob, Optional<Day> otherDay) {
        var sameJob = job.isPresent() && job.equals(otherJob);
        return sameJob || otherDay.isPresent() && (day.filter(otherDay.get()::isNear).isPresent()
                || sightings.stream().anyMatch(otherDay.get()::isNear));
    }
}
