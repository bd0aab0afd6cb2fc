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
import org.benchlore.model.TopElement;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Does one thing to a note or a job and saves it, and can take the last thing back. What is being edited elsewhere is
 * changed there, to be saved with the rest. Not for the window's thread; one thing at a time.
 */
final class DeskWork {

    private final OpenLibrary library;
    private Optional<Done> last = Optional.empty();

    /** What was done last: the element before, the hash of its file after, and what it was in words. */
    private record Done(TopElement before, String after, String label) {
    }

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
        last = Optional.empty();
        var open = library.sessions().find(path);
        if (open.isPresent()) {
            open.get().execute(maker.in(open.get()));
            return;
        }
        try (var session = library.sessions().open(path)) {
            var before = EcoreUtil.copy(session.element());
            var edit = maker.in(session);
            session.execute(edit);
            save(session);
            last = library.library().file(path).map(file -> new Done(before, file.hash(), edit.label()));
        }
    }

    private static void save(EditSession session) throws LibraryException {
        if (session.save() instanceof SaveResult.Stopped stopped) {
            throw new LibraryException(stopped.conflict().sentence());
        }
    }

    /**
     * Takes the last thing back and returns what it was, empty if there is nothing to take back. No session is kept for
     * it, so that the file can be edited elsewhere meanwhile; if it was saved there since, nothing is taken back.
     */
    synchronized Optional<String> takeBack() throws LibraryException {
        var done = last;
        last = Optional.empty();
        if (done.isPresent()) {
            library.library().save(done.get().before(), Optional.of(done.get().after()));
        }
        return done.map(Done::label);
    }
}
