// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.plan.PlanMenu;
import org.benchlore.ui.review.ReviewMenu;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Shows the library as a tree with a filter above it. */
public final class TreeView extends ViewPart {

    private static final int TYPING_PAUSE = 150;
    private static final int FEW = 300;

    private Text filter;
    private NodeTree nodes;
    private Label count;
    private TreeJob job;
    private LibrarySession session;
    private Runnable unlisten = () -> { };

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        GridLayoutFactory.fillDefaults().margins(2, 4).spacing(0, 4).applyTo(parent);
        createFilter(parent);
        createTree(parent);
        count = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(4, 0).applyTo(count);
        var thread = new WindowThread(nodes.control());
        job = new TreeJob(shown -> thread.run(() -> show(shown)));
        unlisten = session.onChange(event -> ask(0));
        ask(0);
    }

    private void createFilter(Composite parent) {
        filter = new Text(parent, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
        filter.setMessage(Messages.filterHint);
        filter.setData(Ids.WIDGET_ID, "tree.filter");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        filter.addModifyListener(event -> ask(TYPING_PAUSE));
        Keys.on(filter, SWT.ARROW_DOWN, () -> nodes.focusFirst());
        Keys.on(filter, SWT.ESC, () -> filter.setText(""));
    }

    private void createTree(Composite parent) {
        nodes = new NodeTree(parent);
        nodes.control().setData(Ids.WIDGET_ID, "tree.nodes");
        nodes.onOpen(new PageOpener(getSite().getPage(), session)::open);
        Keys.on(nodes.control(), SWT.ESC, () -> filter.setFocus());
        Keys.name(nodes.control(), Messages.treeName);
        createMenu();
        GridDataFactory.fillDefaults().grab(true, true).applyTo(nodes.control());
    }

    private void createMenu() {
        var menu = new Menu(nodes.control());
        item(menu, Messages.menuOpen, new PageOpener(getSite().getPage(), session)::open);
        item(menu, Messages.menuEdit, address -> new EditOpener(getSite().getPage()).edit(address));
        nodes.control().setMenu(menu);
        menu.addListener(SWT.Show, event -> {
            for (var item : menu.getItems()) {
                item.setEnabled(nodes.selected().isPresent());
            }
        });
        PlanMenu.addTo(menu, getSite(), nodes::selected);
        ReviewMenu.addTo(menu, getSite(), nodes::selected);
    }

    private void item(Menu menu, String words, Consumer<Address> action) {
        var item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, event -> nodes.selected().ifPresent(action));
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == Address.class ? adapter.cast(nodes.selected().orElse(null)) : super.getAdapter(adapter);
    }

    private void ask(long delay) {
        job.show(new TreeJob.Wish(session.current(), filter.getText()), delay);
    }

    private void show(TreeJob.Shown shown) {
        var filtered = !filter.getText().isBlank();
        nodes.show(shown.nodes(), filtered && shown.elements() <= FEW);
        count.setText(countText(shown.elements(), filtered));
    }

    private String countText(int elements, boolean filtered) {
        if (session.current().isEmpty()) {
            return Messages.noLibrary;
        }
        if (filtered) {
            return elements == 0 ? Messages.nothingFits : NLS.bind(Messages.elementsFit, elements);
        }
        return NLS.bind(Messages.elementsInAll, elements);
    }

    @Override
    public void setFocus() {
        filter.setFocus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        if (job != null) {
            job.cancel();
        }
        super.dispose();
    }
}
