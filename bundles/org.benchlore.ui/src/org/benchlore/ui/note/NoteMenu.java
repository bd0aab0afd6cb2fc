// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchSite;
import org.eclipse.ui.keys.IBindingService;

/** What can be done to a note, for context menus; with the keys that do the same. */
public final class NoteMenu {

    private NoteMenu() {
    }

    /**
     * Adds the items.
     *
     * @param menu a context menu
     * @param site the part that the menu belongs to
     */
    public static void addTo(Menu menu, IWorkbenchSite site) {
        item(menu, site, Messages.menuSeenAgain, "org.benchlore.ui.note.seenAgain",
                () -> new SeenAgainAction(site.getWorkbenchWindow()).run());
        item(menu, site, Messages.menuToStep, "org.benchlore.ui.note.toStep",
                () -> new StepAction(site.getWorkbenchWindow()).run());
    }

    private static void item(Menu menu, IWorkbenchSite site, String words, String command, Runnable action) {
        var item = new MenuItem(menu, SWT.PUSH);
        TriggerSequence key = site.getService(IBindingService.class).getBestActiveBindingFor(command);
        item.setText(key == null ? words : words + "\t" + key.format());
        item.addListener(SWT.Selection, event -> action.run());
    }
}
