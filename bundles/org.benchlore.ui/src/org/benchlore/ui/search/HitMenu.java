// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.search.Hit;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.note.NoteMenu;
import org.benchlore.ui.plan.PlanMenu;
import org.benchlore.ui.review.ReviewMenu;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchSite;

/** What can be done to the hit that is selected. */
final class HitMenu {

    private HitMenu() {
    }

    static void addTo(HitTable hits, Consumer<Address> opener, IWorkbenchSite site) {
        var menu = new Menu(hits.control());
        item(menu, Messages.menuOpen, hits, opener);
        item(menu, Messages.menuEdit, hits, address -> new EditOpener(site.getPage()).edit(address));
        var any = Set.of(menu.getItems());
        new MenuItem(menu, SWT.SEPARATOR);
        NoteMenu.addTo(menu, site);
        menu.addListener(SWT.Show, event -> {
            for (var item : menu.getItems()) {
                item.setEnabled(isFor(hits.selected(), any.contains(item)));
            }
        });
        PlanMenu.addTo(menu, site, () -> hits.selected().map(hit -> hit.row().address()));
        ReviewMenu.addTo(menu, site, () -> hits.selected().map(hit -> hit.row().address()));
        hits.control().setMenu(menu);
    }

    private static boolean isFor(Optional<Hit> selected, boolean any) {
        return selected.filter(hit -> any || hit.row().kind() == Kind.NOTE).isPresent();
    }

    private static void item(Menu menu, String words, HitTable hits, Consumer<Address> action) {
        var item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, event -> hits.selected().map(hit -> hit.row().address()).ifPresent(action));
    }
}
