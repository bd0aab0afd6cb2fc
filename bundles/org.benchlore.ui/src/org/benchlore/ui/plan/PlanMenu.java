// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.model.Address;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchSite;
import org.eclipse.ui.keys.IBindingService;

/** The item of context menus that adds to the plan; it can be chosen where there is something to plan. */
public final class PlanMenu {

    private PlanMenu() {
    }

    /**
     * Adds the item.
     *
     * @param menu a context menu, whose own listeners are there already
     * @param site the part that the menu belongs to
     * @param selected what the menu is about
     */
    public static void addTo(Menu menu, IWorkbenchSite site, Supplier<Optional<Address>> selected) {
        var item = new MenuItem(menu, SWT.PUSH);
        TriggerSequence key = site.getService(IBindingService.class).getBestActiveBindingFor("org.benchlore.ui.plan.this");
        item.setText(key == null ? Messages.menuPlanThis : Messages.menuPlanThis + "\t" + key.format());
        item.addListener(SWT.Selection, event -> new PlanThis(site.getWorkbenchWindow()).run());
        var session = site.getService(LibrarySession.class);
        menu.addListener(SWT.Show, event -> item.setEnabled(session.current().flatMap(opened -> selected.get()
                .flatMap(address -> opened.library().library().catalogue().at(address)))
                .filter(row -> PlanThis.isPlanned(row.kind())).isPresent()));
    }
}
