// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.benchlore.model.Address;
import org.benchlore.store.Row;
import org.benchlore.ui.review.ReviewAction.Task;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchSite;
import org.eclipse.ui.keys.IBindingService;

/** The items of context menus that review, withdraw and compare. */
public final class ReviewMenu {

    private ReviewMenu() {
    }

    /**
     * Adds the items.
     *
     * @param menu a context menu, whose own listeners are there already
     * @param site the part that the menu belongs to
     * @param selected what the menu is about
     */
    public static void addTo(Menu menu, IWorkbenchSite site, Supplier<Optional<Address>> selected) {
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, site, Messages.menuReview, Task.REVIEW, selected, ReviewAction::isReviewed);
        item(menu, site, Messages.menuWithdraw, Task.WITHDRAW, selected, ReviewAction::isReviewed);
        item(menu, site, Messages.menuCompare, Task.COMPARE, selected, row -> true);
    }

    private static void item(Menu menu, IWorkbenchSite site, String words, Task task,
            Supplier<Optional<Address>> selected, Predicate<Row> fits) {
        var item = new MenuItem(menu, SWT.PUSH);
        var key = site.getService(IBindingService.class).getBestActiveBindingFor(command(task));
        item.setText(key == null ? words : words + "\t" + key.format());
        item.addListener(SWT.Selection, event -> new ReviewAction(site.getWorkbenchWindow()).run(task));
        var session = site.getService(LibrarySession.class);
        menu.addListener(SWT.Show, event -> item.setEnabled(session.current().flatMap(opened -> selected.get()
                .flatMap(address -> opened.library().library().catalogue().at(address))).filter(fits).isPresent()));
    }

    private static String command(Task task) {
        return "org.benchlore.ui.review." + task.name().toLowerCase(java.util.Locale.ROOT);
    }
}
