// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.References;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.Sessions;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Person;
import org.benchlore.model.Sighting;
import org.benchlore.model.Tally;
import org.benchlore.model.Unit;
import org.benchlore.store.LibraryException;

/**
 * Says of a note that the same was seen once more: one more sighting, and the count goes up by one. A note without a
 * tally was seen once, when it was written. 'Of about N' is raised only where the count would exceed it, since nobody
 * said how many jobs there were.
 */
public final class SeenAgain {

    /**
     * When and where it was seen.
     *
     * @param unit on which unit, if known
     * @param date on which day
     * @param by by whom, if known
     */
    public record Occasion(Optional<Address> unit, LocalDate date, Optional<Address> by) {
    }

    private SeenAgain() {
    }

    /**
     * Makes the edit.
     *
     * @param session the session of a note
     * @param occasion when and where
     * @return one edit
     * @throws IllegalArgumentException if the session is not one of a note
     */
    public static Edit edit(EditSession session, Occasion occasion) {
        if (!(session.element() instanceof FieldNote note)) {
            throw new IllegalArgumentException(session.title() + " is no note: only notes are seen again");
        }
        return note.getSeen() == null ? first(session, note, occasion) : further(session, note.getSeen(), occasion);
    }

    /**
     * Does it and saves the note. If the note is being edited, the edit is only added there, to be saved with the rest.
     *
     * @param sessions the library's sessions
     * @param path path of the note's file
     * @param occasion when and where
     * @throws LibraryException if the note cannot be edited or was not saved
     */
    public static void record(Sessions sessions, String path, Occasion occasion) throws LibraryException {
        var open = sessions.find(path);
        if (open.isPresent()) {
            open.get().execute(edit(open.get(), occasion));
            return;
        }
        try (var session = sessions.open(path)) {
            session.execute(edit(session, occasion));
            if (session.save() instanceof SaveResult.Stopped stopped) {
                throw new LibraryException(stopped.conflict().sentence());
            }
        }
    }

    private static Edit first(EditSession session, FieldNote note, Occasion occasion) {
        var tally = BookFactory.eINSTANCE.createTally();
        tally.setCount(2);
        if (note.getDate() != null) {
            tally.setSince(note.getDate().getYear());
            var library = session.library();
            tally.getSightings().add(sighting(new Occasion(library.addressOf(note.getUnit()), note.getDate(),
                    library.addressOf(note.getAuthor()))));
        }
        tally.getSightings().add(sighting(occasion));
        var adding = session.edits().inner().add(note, Literals.FIELD_NOTE__SEEN, tally, InnerEdits.END);
        return Edits.all("say it was seen again", List.of(adding.edit()));
    }

    private static Edit further(EditSession session, Tally tally, Occasion occasion) {
        var edits = session.edits();
        int count = Math.max(tally.getCount() == null ? 1 : tally.getCount(), tally.getSightings().size()) + 1;
        var all = new ArrayList<Edit>();
        all.add(edits.value(tally, Literals.TALLY__COUNT, count));
        if (tally.getOfAbout() != null && tally.getOfAbout() < count) {
            all.add(edits.value(tally, Literals.TALLY__OF_ABOUT, count));
        }
        all.add(edits.inner().add(tally, Literals.TALLY__SIGHTINGS, sighting(occasion), InnerEdits.END).edit());
        return Edits.all("say it was seen again", all);
    }

    private static Sighting sighting(Occasion occasion) {
        var sighting = BookFactory.eINSTANCE.createSighting();
        sighting.setDate(occasion.date());
        occasion.unit().ifPresent(unit -> sighting.setUnit((Unit) References.to(Literals.UNIT, unit)));
        occasion.by().ifPresent(person -> sighting.setBy((Person) References.to(Literals.PERSON, person)));
        return sighting;
    }
}
