// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import org.benchlore.edit.desk.NoteToStep;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Procedure;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.edit.FormEditor;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.status.LastChange;
import org.eclipse.ui.IWorkbenchWindow;

/** Makes a step of a procedure from the note in front and opens the editors of both, the procedure's at the step. */
public final class StepAction {

    private final IWorkbenchWindow window;

    /**
     * Makes the action.
     *
     * @param window the window
     */
    public StepAction(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Asks where the step goes, and makes it. */
    public void run() {
        window.getService(LibrarySession.class).current().ifPresent(opened -> {
            var library = opened.library().library();
            var address = new Standing(window.getActivePage(), library).element();
            var note = address.flatMap(at -> SeenAgainAction.note(library, at));
            if (note.isEmpty() || !opened.library().isWritable()) {
                window.getService(LastChange.class).say(window,
                        note.isEmpty() ? Messages.noNote : Messages.seenReadOnly);
                return;
            }
            new StepDialog(window.getShell(), library, note.get(),
                    place -> make(opened, address.get(), note.get(), place)).open();
        });
    }

    private void make(Opened opened, Address at, FieldNote note, StepDialog.Place place) {
        try {
            var sessions = opened.library().sessions();
            var isOpen = sessions.find(at.path()).isPresent();
            var source = sessions.open(at.path());
            var target = sessions.open(place.path());
            var work = ((Procedure) target.element()).getWays().get(place.way()).getWork();
            var step = NoteToStep.execute(source, target, work, place.index());
            var opener = new EditOpener(window.getActivePage());
            if (source.isDirty()) {
                opener.show(source);
            } else if (!isOpen) {
                source.close();
            }
            opener.show(target);
            if (window.getActivePage().getActiveEditor() instanceof FormEditor form) {
                form.reveal(step);
            }
            window.getService(LastChange.class).say(window,
                    source.isDirty() ? Messages.stepMadeInBoth : Messages.stepMade);
        } catch (LibraryException | IllegalArgumentException | IndexOutOfBoundsException e) {
            Failures.show(Messages.stepTitle, e.getMessage(), e);
        }
    }
}
