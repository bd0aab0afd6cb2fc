// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;

/** Where unit and work are picked and ticks say where the machine stands; every change is told at once. */
public final class PlanForm {

    private static final int USUAL_WIDTH = 300;

    private final ScrolledComposite scroll;
    private final Composite column;
    private final PickField subject;
    private final PickField work;
    private final LineTable picked;
    private final LineTable open;
    private final LineTable done;
    private final Supplier<Optional<Catalogue>> catalogue;
    private volatile String subjectId = "";

    /**
     * Makes it.
     *
     * @param parent holds it
     * @param view begins the ids of its widgets, such as {@code plan}
     * @param catalogue where titles are found
     * @param change is told what is picked, as a change of what is wanted
     */
    public PlanForm(Composite parent, String view, Supplier<Optional<Catalogue>> catalogue,
            Consumer<UnaryOperator<Wanted>> change) {
        this.catalogue = catalogue;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        column = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(4, 3).applyTo(column);
        subject = new PickField(column, view + ".subject",
                new PickField.Names(Messages.subject, Messages.subjectHint), true,
                typed -> find(all -> PickFinder.subjects(all, typed)), this::fit,
                row -> takeSubject(row, change));
        work = new PickField(column, view + ".work", new PickField.Names(Messages.work, Messages.workHint), false,
                typed -> find(all -> PickFinder.work(all, typed, subjectId)), this::fit,
                row -> change.accept(it -> it.adding(row.id())));
        picked = new LineTable(column, view + ".picked", Messages.picked, SWT.NONE);
        open = new LineTable(column, view + ".open", Messages.openAlready, SWT.CHECK);
        done = new LineTable(column, view + ".done", Messages.doneAlready, SWT.CHECK);
        listen(change);
    }

    private void listen(Consumer<UnaryOperator<Wanted>> change) {
        picked.onRemove(id -> change.accept(it -> it.removing(id)));
        open.onTick((id, isOpen) -> change.accept(it -> it.opened(id, isOpen)));
        done.onTick((id, isDone) -> change.accept(it -> it.done(id, isDone)));
        scroll.setContent(column);
        scroll.addListener(SWT.Resize, event -> fit());
        column.addListener(SWT.Dispose, event -> {
            subject.dispose();
            work.dispose();
        });
    }

    /** What is to be done is asked next. */
    private void takeSubject(Row row, Consumer<UnaryOperator<Wanted>> change) {
        change.accept(it -> it.on(row.id()));
        work.focus();
    }

    private List<Row> find(Function<Catalogue, List<Row>> finder) {
        return catalogue.get().map(finder).orElse(List.of());
    }

    /** The widget. */
    public Composite control() {
        return scroll;
    }

    /** Where further fields can stand, below its own. */
    public Composite column() {
        return column;
    }

    /** Puts the cursor where something is still to be picked. */
    public void focus() {
        (subject.isPicked() ? work : subject).focus();
    }

    /** Empties the fields and puts the cursor into the first one. */
    public void clear() {
        subject.keep("");
        subject.focus();
    }

    /** Shows what is picked and what can be ticked. */
    public void show(Wanted wanted, FormLines lines) {
        subjectId = wanted.subject();
        subject.keep(lines.subject());
        boolean resized = picked.show(lines.work(), List.of());
        resized |= open.show(lines.accesses(), wanted.open());
        resized |= done.show(lines.doable(), wanted.done());
        if (resized) {
            fit();
        }
    }

    /** Makes room for what stands in it now. */
    public void fit() {
        int width = scroll.getClientArea().width;
        scroll.setMinSize(column.computeSize(width > 0 ? width : USUAL_WIDTH, SWT.DEFAULT));
        column.layout(true, true);
    }
}
