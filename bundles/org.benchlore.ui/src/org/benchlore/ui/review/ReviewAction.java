// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import java.time.LocalDate;
import java.util.function.BiConsumer;

import org.benchlore.check.review.Reviews;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.store.Row;
import org.benchlore.ui.note.Standing;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.status.LastChange;
import org.benchlore.ui.status.SavedAtOnce;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

/** Reviews, withdraws or compares what is in front; where that cannot be, it says what to do. */
public final class ReviewAction {

    private final IWorkbenchWindow window;

    /** What can be asked for; the words stand in {@code plugin.xml}. */
    public enum Task {
        /** Look through a procedure and mark it as reviewed. */
        REVIEW,
        /** Say that a procedure is not followed any more. */
        WITHDRAW,
        /** Make a procedure a draft again. */
        REOPEN,
        /** Say how an element differs from another version of it. */
        COMPARE
    }

    /**
     * Makes the action.
     *
     * @param window the window
     */
    public ReviewAction(IWorkbenchWindow window) {
        this.window = window;
    }

    /**
     * Does it for what is in front.
     *
     * @param task what is asked for
     */
    public void run(Task task) {
        switch (task) {
            case REVIEW -> onProcedure(this::review);
            case WITHDRAW -> onProcedure(this::withdraw);
            case REOPEN -> onProcedure(this::reopen);
            case COMPARE -> inFront(this::compare);
        }
    }

    /** Whether what can be done to procedures can be done to it. */
    static boolean isReviewed(Row row) {
        return row.kind() == Kind.PROCEDURE;
    }

    private void inFront(BiConsumer<Opened, Row> action) {
        window.getService(LibrarySession.class).current().ifPresent(opened -> {
            var library = opened.library().library();
            new Standing(window.getActivePage(), library).element()
                    .flatMap(address -> library.catalogue().entry(address.path())).flatMap(entry -> entry.row())
                    .ifPresentOrElse(row -> action.accept(opened, row), () -> say(Messages.nothingInFront));
        });
    }

    private void onProcedure(BiConsumer<Opened, Row> action) {
        inFront((opened, row) -> {
            if (!isReviewed(row)) {
                say(Messages.noProcedure);
            } else if (!opened.library().isWritable()) {
                say(Messages.readOnly);
            } else {
                action.accept(opened, row);
            }
        });
    }

    private void review(Opened opened, Row row) {
        var reviews = opened.library().reviews();
        new ReviewDialog(window.getShell(), reviews, row, reviewer -> new SavedAtOnce(window).make(
                () -> reviews.review(row.path(), reviewer.at(), LocalDate.now()),
                NLS.bind(Messages.reviewed, row.title(), reviewer.name()))).open();
    }

    private void withdraw(Opened opened, Row row) {
        var reviews = opened.library().reviews();
        new WithdrawDialog(window.getShell(), opened.library(), row, (reason, successor) -> new SavedAtOnce(window).make(
                () -> reviews.withdraw(row.path(), reason, successor), NLS.bind(Messages.withdrawn, row.title()))).open();
    }

    private void reopen(Opened opened, Row row) {
        var isDraft = opened.library().sessions().current(row.path()).filter(Procedure.class::isInstance)
                .map(Procedure.class::cast).filter(one -> Reviews.standing(one) == Reviews.Standing.DRAFT).isPresent();
        if (isDraft) {
            say(NLS.bind(Messages.isDraft, row.title()));
        } else {
            new SavedAtOnce(window).make(() -> opened.library().reviews().reopen(row.path()),
                    NLS.bind(Messages.reopened, row.title()));
        }
    }

    private void compare(Opened opened, Row row) {
        new CompareDialog(window.getShell(), opened.library(), row).open();
    }

    private void say(String sentence) {
        window.getService(LastChange.class).say(window, sentence);
    }
}
