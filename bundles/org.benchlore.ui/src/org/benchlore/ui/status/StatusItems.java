// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.status;

import java.util.List;

import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.jface.action.StatusLineContributionItem;

/** The right end of the status line: which library, whether it can be written, what is wrong with it. */
public final class StatusItems {

    private static final int WIDE = 62;
    private static final int NARROW = 14;

    private final StatusLineContributionItem library = new StatusLineContributionItem("benchlore.library", WIDE);
    private final StatusLineContributionItem access = new StatusLineContributionItem("benchlore.access", NARROW);
    private final StatusLineContributionItem problems = new StatusLineContributionItem("benchlore.problems", NARROW);
    private final LibrarySession session;

    /**
     * Makes the items.
     *
     * @param session holds the library
     */
    public StatusItems(LibrarySession session) {
        this.session = session;
    }

    /**
     * Adds the items to a status line and keeps them up to date.
     *
     * @param line the status line
     */
    public void fill(IStatusLineManager line) {
        List.of(library, access, problems).forEach(line::add);
        session.onChange(event -> show());
        show();
    }

    private void show() {
        library.setText(session.current().map(StatusItems::title).orElse(Messages.noLibrary));
        access.setText(session.current().filter(opened -> !opened.library().isWritable())
                .map(opened -> Messages.readOnly).orElse(""));
        problems.setText(session.current().map(opened -> count(opened.problems().size())).orElse(""));
    }

    private static String title(Opened opened) {
        var title = opened.library().title();
        return opened.library().isInvented() ? NLS.bind(Messages.inventedTitle, title) : title;
    }

    private static String count(int count) {
        return count == 0 ? Messages.noProblems : count == 1 ? Messages.oneProblem : NLS.bind(Messages.problems, count);
    }
}
