// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import org.benchlore.model.Kind;
import org.benchlore.store.Row;
import org.benchlore.ui.Failures;
import org.benchlore.ui.note.Standing;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.status.LastChange;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

/** Adds the procedure, unit or machine in front to the plan, and shows the plan. */
public final class PlanThis {

    private final IWorkbenchWindow window;

    /**
     * Makes the action.
     *
     * @param window the window
     */
    public PlanThis(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Does it, or says what can be planned. */
    public void run() {
        window.getService(LibrarySession.class).current().ifPresent(opened -> {
            var library = opened.library().library();
            new Standing(window.getActivePage(), library).element().flatMap(address -> library.catalogue().at(address))
                    .filter(row -> isPlanned(row.kind())).ifPresentOrElse(this::add,
                            () -> window.getService(LastChange.class).say(window, Messages.nothingToPlan));
        });
    }

    static boolean isPlanned(Kind kind) {
        return kind == Kind.PROCEDURE || Wanted.isSubject(kind);
    }

    private void add(Row row) {
        try {
            PlanView.show(window.getActivePage()).add(row);
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }
}
