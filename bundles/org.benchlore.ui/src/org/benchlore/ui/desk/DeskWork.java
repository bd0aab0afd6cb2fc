// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.desk.NoteStatuses;
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
    private Optional<EditSession> last = Optional.empty();

    /** Makes an edit in a session, or says in a plain sentence what is missing for it. */
    interface Maker {
        Edit in(EditSession session);
    }

    DeskWork(OpenLibrary library) {
        this.library = library;
    }

    static Maker status(NoteStatus status) {
        return session -> NoteStatuses.change(session, status);
    }

    /** Says that a fix held and how that was proved. */
    static Maker held(String proof) {
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

    static Maker ruledOut(String why) {
        return session -> Edits.all("rule out", List.of(
                session.edits().text(session.element(), Literals.FIELD_NOTE__VERIFICATION, why),
                session.edits().value(session.element(), Literals.FIELD_NOTE__STATUS, NoteStatus.RULED_OUT)));
    }

    static Maker seenAgain(LocalDate day) {
        return session -> SeenAgain.edit(session, new SeenAgain.Occasion(Optional.empty(), day, Optional.empty()));
    }

    static Maker replacedBy(Row other) {
        return session -> NoteStatuses.supersede(session, other.address());
    }

    /**
     * Does it.
     *
     * @throws LibraryException if the file cannot be edited or was not saved
     * @throws IllegalArgumentException with a plain sentence if something is missing for it
     */
    synchronized void apply(String path, Maker maker) throws LibraryException {
        forget();
        var open = library.sessions().find(path);
        if (open.isPresent()) {
            open.get().execute(maker.in(open.get()));
            return;
        }
        var session = library.sessions().open(path);
        try {
            session.execute(maker.in(session));
            save(session);
            last = Optional.of(session);
        } finally {
            if (last.isEmpty()) {
                session.close();
            }
        }
    }

    private static void save(EditSession session) throws LibraryException {
        if (session.save() instanceof SaveResult.Stopped stopped) {
            throw new LibraryException(stopped.conflict().sentence());
        }
    }

    /** Takes the last thing back and returns what it was, empty if there is nothing to take back. */
    synchronized Optional<String> takeBack() throws LibraryException {
        var label = last.flatMap(EditSession::undoLabel);
        if (label.isPresent()) {
            last.get().undo();
            save(last.get());
        }
        forget();
        return label;
    }

    /** Lets go of what could be taken back, so that it can be edited elsewhere. */
    synchronized void forget() {
        last.ifPresent(EditSession::close);
        last = Optional.empty();
    }
}
