// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.access;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.access.Hours;
import org.benchlore.edit.access.SplitHours;
import org.benchlore.edit.access.SplitPlaces;
import org.benchlore.model.Address;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.edit.FormEditor;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.status.LastChange;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IWorkbenchWindow;

/** Splits the hours of the procedure or the machine whose editor is in front; the editors of both files stay open. */
public final class SplitAction {

    private final IWorkbenchWindow window;

    /**
     * Makes the action.
     *
     * @param window the window
     */
    public SplitAction(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Asks what must come off first and how long everything takes, and splits the hours. */
    public void run() {
        var opened = window.getService(LibrarySession.class).current();
        if (opened.isEmpty() || !(window.getActivePage().getActiveEditor() instanceof FormEditor form)
                || form.element().isEmpty()) {
            say(Messages.noEditor);
        } else if (!opened.get().library().isWritable()) {
            say(Messages.readOnly);
        } else {
            run(opened.get().library().sessions(), form.element().get());
        }
    }

    private void run(Sessions sessions, TopElement element) {
        var found = new SplitPlaces(sessions).of(element);
        var problem = element instanceof Procedure procedure ? SplitHours.problem(procedure)
                : Optional.<String>empty();
        if (problem.isPresent()) {
            say(problem.get());
        } else if (found.isEmpty()) {
            say(element instanceof Procedure ? Messages.noMachine : Messages.noHours);
        } else {
            new SplitDialog(window.getShell(), sessions, found, element instanceof Procedure,
                    (place, name, usual, bad) -> split(sessions, place, name, usual, bad, element)).open();
        }
    }

    private void say(String words) {
        window.getService(LastChange.class).say(window, words);
    }

    private void split(Sessions sessions, SplitPlaces.Place place, String name, Hours usual, Hours bad,
            TopElement front) throws LibraryException {
        var open = List.of(sessions.find(place.machine()).isPresent(), sessions.find(place.procedure()).isPresent());
        var machine = sessions.open(place.machine());
        var procedure = sessions.open(place.procedure());
        Address access;
        try {
            access = new SplitHours(machine, procedure).execute(name, usual, bad);
        } catch (IllegalArgumentException e) {
            closeUnless(open.get(0), machine);
            closeUnless(open.get(1), procedure);
            throw e;
        }
        var opened = machine.element().eResource().getEObject(access.id());
        var way = ((Procedure) procedure.element()).getWays().get(0);
        if (front instanceof Procedure) {
            show(machine, opened);
            show(procedure, way);
        } else {
            show(procedure, way);
            show(machine, opened);
        }
        say(Messages.done);
    }

    private static void closeUnless(boolean wasOpen, EditSession session) {
        if (!wasOpen) {
            session.close();
        }
    }

    /** Both editors are opened, so that both files can be seen, saved and undone; the one asked from is in front. */
    private void show(EditSession session, EObject inner) {
        new EditOpener(window.getActivePage()).show(session);
        if (window.getActivePage().getActiveEditor() instanceof FormEditor form) {
            form.reveal(inner);
        }
    }
}
