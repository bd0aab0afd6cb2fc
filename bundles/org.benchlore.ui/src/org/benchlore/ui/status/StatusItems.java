// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.status;

import java.util.List;

import org.benchlore.check.Report;
import org.benchlore.store.FileProblem;
import org.benchlore.ui.session.Checking;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.StatusLineContributionItem;
import org.eclipse.osgi.util.NLS;

/** The right end of the status line: which library, whether it can be written, what is wrong with it. */
public final class StatusItems {

    private static final int WIDE = 62;
    private static final int NARROW = 14;
    private static final int COUNTS = 24;

    private final StatusLineContributionItem library = new StatusLineContributionItem("benchlore.library", WIDE);
    private final StatusLineContributionItem access = new StatusLineContributionItem("benchlore.access", NARROW);
    private final StatusLineContributionItem problems = new StatusLineContributionItem("benchlore.problems", COUNTS);
    private final LibrarySession session;
    private final Checking checking;

    /**
     * Makes the items.
     *
     * @param session holds the library
     * @param checking what the rules find in it
     */
    public StatusItems(LibrarySession session, Checking checking) {
        this.session = session;
        this.checking = checking;
    }

    /**
     * Adds the items to a status line and keeps them up to date.
     *
     * @param line the status line
     */
    public void fill(IStatusLineManager line) {
        // A narrow window cuts the end off: the counts come first.
        List.of(problems, access, library).forEach(line::add);
        session.onChange(event -> show());
        checking.onChange(this::show);
        show();
    }

    private void show() {
        library.setText(session.current().map(StatusItems::title).orElse(Messages.noLibrary));
        access.setText(session.current().filter(opened -> !opened.library().isWritable())
                .map(opened -> Messages.readOnly).orElse(""));
        problems.setText(session.current().map(this::counts).orElse(""));
    }

    private static String title(Opened opened) {
        var title = opened.library().title();
        return opened.library().isInvented() ? NLS.bind(Messages.inventedTitle, title) : title;
    }

    private String counts(Opened opened) {
        var report = checking.found().map(Checking.Found::report);
        var files = checking.found().map(found -> found.unsaid(opened.problems())).orElse(opened.problems());
        long misfits = files.stream().filter(one -> one.severity() == FileProblem.Severity.MISFIT).count();
        long errors = files.size() - misfits + report.map(Report::errors).orElse(0L);
        long warnings = misfits + report.map(Report::warnings).orElse(0L);
        if (errors + warnings == 0) {
            return report.isEmpty() ? Messages.checking : Messages.noProblems;
        }
        return NLS.bind(Messages.counts, count(errors, Messages.oneError, Messages.errors),
                count(warnings, Messages.oneWarning, Messages.warnings));
    }

    private static String count(long count, String one, String several) {
        return count == 1 ? one : NLS.bind(several, count);
    }
}
