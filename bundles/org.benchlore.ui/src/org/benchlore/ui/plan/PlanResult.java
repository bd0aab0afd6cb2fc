// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;

import org.benchlore.model.Address;
import org.benchlore.page.Page;
import org.benchlore.ui.Ids;
import org.benchlore.ui.page.PageCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

/** The plan, the picture of its accesses and its job card, one behind the other; only the one in front is laid out. */
final class PlanResult {

    /** A tab and the page that it shows. */
    private record Tab(PageCanvas canvas, Function<Planned, Page> page) {
    }

    private final TabFolder folder;
    private final List<Tab> tabs = new ArrayList<>();
    private final int zoom;
    private final Consumer<Address> opener;
    private final List<Tab> stale = new ArrayList<>();
    private Planned planned;

    PlanResult(Composite parent, int zoom, Consumer<Address> opener) {
        this.zoom = zoom;
        this.opener = opener;
        folder = new TabFolder(parent, SWT.NONE);
        folder.setData(Ids.WIDGET_ID, "plan.tabs");
        tab(Messages.planTab, "plan.page", Planned::main);
        tab(Messages.accessesTab, "plan.picture", Planned::picture);
        tab(Messages.cardTab, "plan.card", Planned::card);
        folder.addListener(SWT.Selection, event -> lay());
    }

    private void tab(String title, String id, Function<Planned, Page> page) {
        var canvas = new PageCanvas(folder, id, zoom, opener);
        var item = new TabItem(folder, SWT.NONE);
        item.setText(title);
        item.setControl(canvas.control());
        tabs.add(new Tab(canvas, page));
    }

    Control control() {
        return folder;
    }

    void zoom(int percent) {
        tabs.forEach(tab -> tab.canvas().zoom(percent));
    }

    void show(Planned next) {
        planned = next;
        stale.clear();
        stale.addAll(tabs);
        lay();
    }

    private void lay() {
        var front = tabs.get(Math.max(0, folder.getSelectionIndex()));
        if (planned != null && stale.remove(front)) {
            front.canvas().show(front.page().apply(planned), front.page().apply(planned) == planned.card()
                    ? planned.images() : Map.of());
        }
    }
}
