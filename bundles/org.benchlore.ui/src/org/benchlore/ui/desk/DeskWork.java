// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.Edits;
import org.benchlore.edit.desk.NoteStatuses;
import org.benchlore.edit.desk.QuickChange;
import org.benchlore.edit.desk.SeenAgain;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.JobRecord;
import org.benchlore.model.NoteStatus;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.benchlore.workshop.OpenLibrary;

/**
 * Does one thing to a note or a job and saves it, and can take the last thing back. What is being edited elsewhere is
 * changed there, to be saved with the rest. Not for the window's thread; one thing at a time.
 */
final class DeskWork {

    private final OpenLibrary library;
    private Optional<QuickChange> last = Optional.empty();

    DeskWork(OpenLibrary library) {
        this.library = library;
    }

    static QuickChange.Maker status(NoteStatus status) {
        return session -> NoteStatuses.change(session, status);
    }

    /** Says that a fix held and how that was proved. */
    static QuickChange.Maker held(String proof) {
        return session -> {
            var element = session.element();
            if (element instanceof JobRecord) {
                return session.edits().text(element, Literals.JOB_RECORD__VERIFICATION, proof);
            }
            var edits = new ArrayList<Edit>();
            edits.add(session.edits().text(element, Literals.FIELD_NOTE__VERIFICATION, proof));
            edits.add(session.edits().value(element, Literals.FIELD_NOTE__STATUS, NoteStatus.HELD));
            return Edits.all("say that it held", edits);
        };
    }

    static QuickChange.Maker ruledOut(String why) {
        return session -> Edits.all("rule out", List.of(
                session.edits().text(session.element(), Literals.FIELD_NOTE__VERIFICATION, why),
                session.edits().value(session.element(), Literals.FIELD_NOTE__STATUS, NoteStatus.RULED_OUT)));
    }

    static QuickChange.Maker seenAgain(LocalDate day) {
        return session -> SeenAgain.edit(session, new SeenAgain.Occasion(Optional.empty(), day, Optional.empty()));
    }

    static QuickChange.Maker replacedBy(Row other) {
        return session -> NoteStatuses.supersede(session, other.address());
    }

    /**
     * Does it.
     *
     * @throws LibraryException if the file cannot be edited or was not saved
     * @throws IllegalArgumentException with a plain sentence if something is missing for it
     */
    synchronized void apply(String path, QuickChange.Maker maker) throws LibraryException {
        last = Optional.empty();
        last = QuickChange.make(library.sessions(), path, maker);
    }

    /**
     * Takes the last thing back and returns what it was, empty if there is nothing to take back. No session is kept for
     * it, so that the file can be edited elsewhere meanwhile; if it was saved there since, nothing is taken back.
     */
    synchronized Optional<String> takeBack() throws LibraryException {
        var done = last;
        last = Optional.empty();
        if (done.isPresent()) {
            done.get().takeBack();
        }
        return done.map(QuickChange::label);
    }
}
