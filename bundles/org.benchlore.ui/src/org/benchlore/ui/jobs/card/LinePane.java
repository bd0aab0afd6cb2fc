// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.model.Address;
import org.benchlore.page.LinePage;
import org.benchlore.page.Page;
import org.benchlore.plan.card.CardLine;
import org.benchlore.ui.Ids;
import org.benchlore.ui.page.PageCanvas;
import org.benchlore.ui.session.SessionMemory;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

/** One line of the card: what is to be followed above, with its hazards first, and below it what is filled in. */
final class LinePane {

    private static final int[] SHARES = {55, 45};
    private static final int MARGIN = 8;

    private final SashForm sash;
    private final PageCanvas page;
    private final ScrolledComposite scrolled;
    private final Tools tools;
    private final Supplier<Optional<Address>> who;
    private final Runnable next;
    private final List<LineBox> boxes = new ArrayList<>();
    private Optional<Node.OfTask> shown = Optional.empty();
    private DoneBox done;

    LinePane(Composite parent, Tools tools, Supplier<Optional<Address>> who, Runnable next) {
        this.tools = tools;
        this.who = who;
        this.next = next;
        sash = new SashForm(parent, SWT.VERTICAL);
        var memory = tools.site().getService(SessionMemory.class);
        page = new PageCanvas(sash, "job.line", memory.zoom(), tools::open);
        var unlisten = memory.onZoom(page::zoom);
        sash.addListener(SWT.Dispose, event -> unlisten.run());
        scrolled = new ScrolledComposite(sash, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.setShowFocusedControl(true);
        scrolled.addListener(SWT.Resize, event -> layOut());
        sash.setWeights(SHARES);
    }

    Control control() {
        return sash;
    }

    void show(Node.OfTask node) {
        if (shown.filter(old -> old.equals(node)).isPresent()) {
            refresh();
            return;
        }
        commit();
        shown = Optional.of(node);
        page.show(node.task().item().map(item -> LinePage.of(tools.library(), item)).orElseGet(() -> unplanned(node)), Map.of());
        create(node);
        refresh();
    }

    private static Page unplanned(Node.OfTask node) {
        return new Page(node.task().title(), List.of(new org.benchlore.page.Block.Heading(1, node.task().title()),
                new org.benchlore.page.Block.Paragraph(List.of(org.benchlore.page.Span.of(Messages.notPlanned)))));
    }

    private void create(Node.OfTask node) {
        boxes.clear();
        if (scrolled.getContent() != null) {
            scrolled.getContent().dispose();
        }
        var content = new Composite(scrolled, SWT.NONE);
        content.setData(Ids.WIDGET_ID, "job.boxes");
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).spacing(0, 6).applyTo(content);
        if (!node.boxes().isEmpty()) {
            var grid = new Composite(content, SWT.NONE);
            GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 4).applyTo(grid);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
            node.boxes().forEach(line -> box(grid, node, line));
        }
        done = new DoneBox(content, tools, node.round(), node.task(), who, this::layOut);
        boxes.add(done);
        var keys = new Label(content, SWT.WRAP);
        keys.setText(Messages.keys);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(keys);
        boxes.stream().flatMap(box -> box.controls().stream()).forEach(this::listen);
        scrolled.setContent(content);
        scrolled.setOrigin(0, 0);
        layOut();
    }

    private void box(Composite grid, Node.OfTask node, CardLine line) {
        if (line instanceof CardLine.Value value) {
            boxes.add(new ValueBox(grid, tools, node.round(), value, who, this::layOut));
        } else if (line instanceof CardLine.Torque torque) {
            boxes.add(new TorqueBox(grid, tools, node.round(), torque, who, this::layOut));
        }
    }

    private void listen(Control control) {
        control.addListener(SWT.KeyDown, event -> pressed(control, event));
    }

    private void pressed(Control control, Event event) {
        boolean isEnter = event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR;
        int held = event.stateMask & SWT.MODIFIER_MASK;
        if (isEnter && (held == 0 || held == SWT.MOD1)) {
            event.doit = false;
            commit();
            if (held == SWT.MOD1) {
                tickAndGoOn();
            } else {
                after(control);
            }
        }
    }

    /** The next box, or after the last one the tick and the next line. */
    private void after(Control control) {
        var all = boxes.stream().flatMap(box -> box.controls().stream()).toList();
        int at = all.indexOf(control);
        if (at < all.size() - 1) {
            all.get(at + 1).setFocus();
        } else {
            tickAndGoOn();
        }
    }

    private void tickAndGoOn() {
        if (done.isTicked() || done.tick()) {
            next.run();
        }
    }

    private void layOut() {
        var content = scrolled.getContent();
        if (content != null && !content.isDisposed()) {
            int width = scrolled.getClientArea().width;
            ((Composite) content).layout(true, true);
            scrolled.setMinSize(width, ((Composite) content).computeSize(width, SWT.DEFAULT, true).y);
        }
    }

    void refresh() {
        boxes.forEach(LineBox::refresh);
    }

    void commit() {
        if (scrolled.getContent() != null && !scrolled.getContent().isDisposed()) {
            boxes.forEach(LineBox::commit);
        }
    }

    void focus() {
        boxes.stream().flatMap(box -> box.controls().stream()).findFirst().ifPresent(Control::setFocus);
    }
}
