// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.function.Consumer;
import java.util.function.Predicate;

import org.benchlore.check.Fix;
import org.benchlore.check.Problem;
import org.benchlore.ui.edit.EditOpener;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchPage;

/** What can be done to the selected problem, with the keys that do the same. */
final class ProblemMenu {

    private final ProblemTable table;
    private final Menu menu;

    ProblemMenu(ProblemTable table) {
        this.table = table;
        this.menu = new Menu(table.table());
        table.table().setMenu(menu);
    }

    void fill(ProblemActions actions, IWorkbenchPage page) {
        item(Messages.menuOpen, row -> true, actions::open);
        item(Messages.menuEdit, row -> row.problem().isPresent(), row -> new EditOpener(page).edit(row.at()));
        new MenuItem(menu, SWT.SEPARATOR);
        var mend = item(Messages.menuMend, ProblemRow::canBeMended, actions::mend);
        menu.addListener(SWT.Show, event -> mend.setText(table.selected().map(ProblemMenu::mendWords)
                .orElse(Messages.menuMend)));
        item(Messages.menuSilence, ProblemRow::canBeSilenced, actions::silence);
    }

    private static String mendWords(ProblemRow row) {
        return row.canBeMended() ? row.problem().flatMap(Problem::fix).map(Fix::label)
                .map(label -> NLS.bind(Messages.menuMendBy, label)).orElse(Messages.menuMend) : Messages.menuMend;
    }

    private MenuItem item(String words, Predicate<ProblemRow> fits, Consumer<ProblemRow> action) {
        var item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, event -> table.selected().ifPresent(action));
        menu.addListener(SWT.Show, event -> item.setEnabled(table.selected().filter(fits).isPresent()));
        return item;
    }
}
