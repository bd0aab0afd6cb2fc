// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.SequencePattern;
import org.benchlore.torque.answer.Field;
import org.benchlore.torque.wrench.WrenchRack;
import org.benchlore.ui.Ids;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.plan.WholeWindow;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.session.SessionMemory;
import org.benchlore.workshop.ShopWrenches;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;

/** Judges, calculates and converts torques, sets wrenches and draws sequences. It only reads and never writes a torque. */
public final class TorqueView extends ViewPart {

    private final List<QuestionTab> tabs = new ArrayList<>();
    private LibrarySession session;
    private WindowThread thread;
    private TabFolder folder;
    private TakeIn takeIn;
    private volatile Optional<WrenchRack> rack = Optional.empty();
    private Runnable unlisten = () -> { };
    private WholeWindow whole;
    private final IPartListener2 parts = new IPartListener2() {
        @Override
        public void partActivated(IWorkbenchPartReference reference) {
            offer();
        }

        @Override
        public void partClosed(IWorkbenchPartReference reference) {
            offer();
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        thread = new WindowThread(parent);
        whole = new WholeWindow(getSite().getPage(), Ids.TORQUE_VIEW);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        takeIn = new TakeIn(parent, session, this::take);
        folder = new TabFolder(parent, SWT.NONE);
        folder.setData(Ids.WIDGET_ID, "torque.tabs");
        GridDataFactory.fillDefaults().grab(true, true).applyTo(folder);
        new Questions(() -> rack).all().forEach(this::tab);
        getSite().getPage().addPartListener(parts);
        unlisten = session.onChange(event -> changed());
        changed();
        offer();
    }

    /**
     * Shows the view in the whole window: an answer is longer than the short place above the pages.
     *
     * @param page where it is shown
     * @throws PartInitException if it cannot be made
     */
    public static void show(IWorkbenchPage page) throws PartInitException {
        var view = (TorqueView) page.showView(Ids.TORQUE_VIEW);
        view.whole.fill();
        view.setFocus();
    }

    private void tab(QuestionKind kind) {
        var tab = new QuestionTab(folder, kind, getSite().getService(SessionMemory.class).zoom());
        var item = new TabItem(folder, SWT.NONE);
        item.setText(kind.title());
        item.setControl(tab.control());
        tabs.add(tab);
    }

    private void changed() {
        var opened = session.current();
        Job.create(Messages.readingWrenches, monitor -> {
            rack = opened.map(Opened::library).map(library -> new ShopWrenches(library.library()).rack());
            thread.run(() -> tabs.forEach(QuestionTab::ask));
        }).schedule();
        offer();
    }

    private void offer() {
        takeIn.offer(getSite().getPage().getActiveEditor());
    }

    /** Every tab takes what it can use; what somebody wrote there about another fastening goes. */
    private void take(Fastened fastened) {
        var words = new EnumMap<Field, String>(fastened.words());
        words.put(Field.LAYOUT, layout(fastened.layout()));
        tabs.forEach(tab -> tab.fill(Map.copyOf(words)));
        tabs.get(folder.getSelectionIndex()).focus();
    }

    private static String layout(SequencePattern pattern) {
        return switch (pattern) {
            case OWN_ORDER -> Messages.own;
            case RECTANGLE -> Messages.grid;
            default -> Messages.circle;
        };
    }

    @Override
    public void setFocus() {
        tabs.get(Math.max(0, folder.getSelectionIndex())).focus();
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(parts);
        unlisten.run();
        super.dispose();
    }
}
