// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.time.LocalDate;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.Sessions;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Kind;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/** Opens editors; one that is open already comes to the front. */
public final class EditOpener {

    private final IWorkbenchPage page;
    private final Editing editing;

    /**
     * Makes an opener.
     *
     * @param page where editors open
     */
    public EditOpener(IWorkbenchPage page) {
        this.page = page;
        this.editing = page.getWorkbenchWindow().getService(Editing.class);
    }

    /**
     * Opens the editor of an element; that of the file at its place, if it is an inner one.
     *
     * @param address where the element stands
     */
    public void edit(Address address) {
        editing.sessions().ifPresent(sessions -> {
            var title = sessions.library().catalogue().entry(address.path()).flatMap(entry -> entry.row())
                    .map(Row::title).orElse(address.id());
            open(sessions, address.path(), title);
            sessions.find(address.path()).ifPresent(session -> reveal(session, address));
        });
    }

    private void reveal(EditSession session, Address address) {
        var inner = address.id().equals(session.element().getId()) ? null
                : session.element().eResource().getEObject(address.id());
        if (inner != null && page.getActiveEditor() instanceof FormEditor form) {
            form.reveal(inner);
        }
    }

    /**
     * Opens the editor of a session.
     *
     * @param session a session of the open library
     */
    public void show(EditSession session) {
        editing.sessions().ifPresent(sessions -> open(sessions, session.path(), session.title()));
    }

    /**
     * Starts a new element and opens its editor. Nothing is written before it is saved.
     *
     * @param kind its kind
     * @param title what people call it; may be empty for a note
     */
    public void create(Kind kind, String title) {
        editing.sessions().ifPresent(sessions -> {
            try {
                var today = LocalDate.now();
                var session = sessions.create(kind, title, today.getYear());
                if (session.element() instanceof FieldNote note) {
                    session.execute(session.edits().value(note, Literals.FIELD_NOTE__DATE, today));
                } else if (session.element() instanceof JobRecord job) {
                    session.execute(session.edits().value(job, Literals.JOB_RECORD__OPENED, today));
                    session.execute(session.edits().value(job, Literals.JOB_RECORD__STATE, JobState.OPEN));
                }
                show(session);
            } catch (LibraryException e) {
                Failures.show(Messages.newFailed, e.getMessage(), e);
            }
        });
    }

    /**
     * Makes an element of which only the title is known and saves it, so that others can refer to it.
     *
     * @param kind its kind
     * @param title what people call it
     * @return where it stands; empty if that failed, which is shown then
     */
    public Optional<Address> make(Kind kind, String title) {
        return editing.sessions().flatMap(sessions -> {
            try (var session = sessions.create(kind, title, LocalDate.now().getYear())) {
                if (session.save() instanceof SaveResult.Saved) {
                    return Optional.of(new Address(session.path(), session.element().getId()));
                }
                return Optional.empty();
            } catch (LibraryException e) {
                Failures.show(Messages.newFailed, e.getMessage(), e);
                return Optional.empty();
            }
        });
    }

    private void open(Sessions sessions, String path, String title) {
        try {
            page.openEditor(new EditInput(sessions.library().root(), path, title), Ids.FORM_EDITOR);
        } catch (PartInitException e) {
            Failures.show(Messages.editFailed, e.getMessage(), e);
        }
    }
}
