// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

import org.benchlore.model.Address;
import org.benchlore.model.Answer;
import org.benchlore.model.JobState;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.benchlore.plan.card.Missing;
import org.benchlore.plan.card.Progress;
import org.benchlore.store.ElementTitle;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.edit.form.DetailArea;
import org.benchlore.ui.edit.form.Unread;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;

/**
 * The body of a job's editor: the card as a tree, and beside it, below it where there is little width, what is filled in
 * for the selected line.
 */
public final class JobPane {

    private static final int[] BESIDE = {40, 60};
    private static final int[] BELOW = {36, 64};
    private static final int NARROW = 680;

    private final Tools tools;
    private final SashForm sash;
    private final JobTree tree;
    private final JobBar bar;
    private final LeadOn leads;
    private final Planning planning;
    private final Composite side;
    private final StackLayout stack = new StackLayout();
    private final LinePane line;
    private final FieldsPane fields;
    private boolean isFirst = true;

    /**
     * Makes it.
     *
     * @param parent a grid of one column
     * @param tools what its parts share
     */
    public JobPane(Composite parent, Tools tools) {
        this.tools = tools;
        leads = new LeadOn(tools);
        planning = new Planning(tools, new WindowThread(parent), this::planned);
        var frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(frame);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        bar = new JobBar(frame, tools, this::state, this::nextRound, leads);
        sash = new SashForm(frame, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        tree = new JobTree(sash);
        side = new Composite(sash, SWT.NONE);
        side.setLayout(stack);
        line = new LinePane(side, tools, bar::who, this::next);
        fields = new FieldsPane(side, tools, planning, bar::who);
        sash.setWeights(BESIDE);
        sash.addListener(SWT.Resize, event -> turn());
        tree.onSelect(this::show);
        tree.onEnter(this::focusSide);
        tree.tree().addListener(SWT.Dispose, event -> planning.dispose());
        refresh();
        tree.select(node -> node.key().equals(Node.Part.ARRIVAL.name())).ifPresent(this::show);
    }

    /** Narrow editors have what is filled in below the card. */
    private void turn() {
        int wanted = sash.getSize().x < NARROW ? SWT.VERTICAL : SWT.HORIZONTAL;
        if (sash.getOrientation() != wanted) {
            sash.setOrientation(wanted);
            sash.setWeights(wanted == SWT.VERTICAL ? BELOW : BESIDE);
        }
    }

    /**
     * Returns what takes the room.
     *
     * @return the control
     */
    public Composite control() {
        return sash;
    }

    /**
     * Returns the forms beside the card.
     *
     * @return the area that shows them
     */
    public DetailArea forms() {
        return fields.area();
    }

    private void show(Node node) {
        line.commit();
        if (node instanceof Node.OfTask task) {
            line.show(task);
            stack.topControl = line.control();
        } else {
            fields.show(node);
            stack.topControl = fields.area().control();
        }
        side.layout();
    }

    private Nodes nodes() {
        return new Nodes(tools.library(), tools.job(), planning.cards());
    }

    /** Shows what the record holds now. */
    public void refresh() {
        planning.refresh();
        showAll();
    }

    private void showAll() {
        var nodes = nodes();
        tree.show(nodes);
        bar.show(tools.job().getState(), standing(nodes));
        if (tree.selected().isEmpty()) {
            tree.select(node -> true).ifPresent(this::show);
        } else if (stack.topControl == line.control()) {
            tree.selected().ifPresent(node -> {
                if (node instanceof Node.OfTask task) {
                    line.show(task);
                }
            });
        }
        fields.refresh();
    }

    private void planned() {
        showAll();
        if (isFirst && !planning.cards().isEmpty()) {
            isFirst = false;
            toOpenLine();
        }
    }

    /** Whoever opens a job that goes on is at its next line. */
    private void toOpenLine() {
        if (tools.job().getState() != JobState.CLOSED && tools.job().getUnit() != null) {
            tree.after(this::isOpen).flatMap(open -> tree.select(node -> node.key().equals(open.key()))).ifPresent(this::show);
        }
    }

    private boolean isOpen(Node node) {
        return node instanceof Node.OfTask task && task.round() == lastPlanned() && !nodes().isTicked(task);
    }

    private Round lastPlanned() {
        return tools.job().getRounds().stream().filter(round -> !round.getPlanned().isEmpty())
                .reduce((first, second) -> second).orElse(null);
    }

    private String standing(Nodes nodes) {
        if (!nodes.problems().isEmpty()) {
            return nodes.problems().get(0);
        }
        var progress = Progress.of(tools.library(), tools.job(), planning.cards());
        if (tools.job().getUnit() == null) {
            return Messages.unitFirst;
        }
        return progress.all() == 0 ? Messages.nothingPlanned : NLS.bind(Messages.progress, new Object[] {progress.done(),
                progress.all(), progress.next().map(next -> NLS.bind(Messages.next, next)).orElse(Messages.allTicked)});
    }

    private void next() {
        tree.after(this::isOpen).ifPresentOrElse(open -> {
            tree.select(node -> node.key().equals(open.key())).ifPresent(this::show);
            line.focus();
        }, () -> {
            tools.said().accept(Messages.allTicked);
            tree.tree().setFocus();
        });
    }

    private void focusSide() {
        if (stack.topControl == line.control()) {
            line.focus();
        } else {
            fields.focus();
        }
    }

    private void nextRound() {
        new RoundDialog(tools.site().getShell(), proposed(), work(), (kind, day, planned, text) -> {
            var adding = tools.edits().nextRound(kind, day, planned, text);
            tools.session().execute(adding.edit());
            isFirst = !planned.isEmpty();
            reveal(adding.element());
        }).open();
    }

    private RoundKind proposed() {
        var last = Nodes.last(tools.job());
        return last == null ? RoundKind.STRIP : last.getKind() == RoundKind.TEACH_IN_FAILED ? RoundKind.STRIP_AGAIN
                : leads.unfinished().isEmpty() ? RoundKind.TEACH_IN_FAILED : RoundKind.STRIP;
    }

    /** What is not done yet, and what the customer accepted. */
    private Map<Address, String> work() {
        var work = new LinkedHashMap<Address, String>();
        leads.unfinished().forEach(address -> work.put(address, title(address)));
        tools.job().getOffers().stream().filter(offer -> offer.getAnswer() == Answer.ACCEPTED)
                .flatMap(offer -> tools.address(offer.getProcedure()).stream())
                .filter(address -> tools.job().getRounds().stream().noneMatch(round -> round.getDone().stream()
                        .anyMatch(done -> tools.recorded().leads(done.getProcedure(), address))))
                .forEach(address -> work.put(address, title(address)));
        return work;
    }

    private String title(Address address) {
        return tools.library().top(address.id()).map(ElementTitle::of).orElse(address.id());
    }

    private void state(JobState state) {
        if (state == tools.job().getState()) {
            return;
        }
        if (state != JobState.CLOSED) {
            tools.did(() -> tools.edits().state(state));
            return;
        }
        line.commit();
        var missing = Missing.of(tools.library(), tools.job(), planning.cards());
        if (missing.isEmpty()) {
            close();
        } else {
            showAll();
            new CloseDialog(tools.site().getShell(), missing, this::close).open();
        }
    }

    private void close() {
        tools.did(() -> tools.edits().close(LocalDate.now()));
        showAll();
    }

    /** Takes what was typed into a box and is not in the record yet. */
    public void commit() {
        line.commit();
    }

    /** The library was changed, so that cards may be planned otherwise now. */
    public void libraryChanged() {
        planning.again();
    }

    /** Puts the cursor where something is to be filled in. */
    public void focus() {
        focusSide();
    }

    /**
     * Selects what an element of the record belongs to.
     *
     * @param inner an element of the record
     */
    public void reveal(EObject inner) {
        for (var at = inner; at != null; at = at.eContainer()) {
            if (at instanceof Round round) {
                tree.select(node -> node instanceof Node.OfRound one && one.round() == round).ifPresent(this::show);
                fields.focus();
                return;
            }
        }
    }

    /**
     * Goes to something that cannot be understood.
     *
     * @param place a box of the card, or a field of a form
     */
    public void goTo(Unread.Place place) {
        tree.after(node -> node instanceof Node.OfTask task && task.boxes().stream().anyMatch(box -> asks(box, place.owner())))
                .flatMap(found -> tree.select(node -> node.key().equals(found.key()))).ifPresentOrElse(node -> {
                    show(node);
                    line.focus();
                }, () -> {
                    if (place.owner() == tools.job()) {
                        tree.select(node -> node.key().equals(Node.Part.ARRIVAL.name())).ifPresent(this::show);
                    } else {
                        reveal(place.owner());
                    }
                    fields.area().pane().ifPresent(pane -> {
                        pane.focus(place);
                        pane.showProblems();
                    });
                });
    }

    private static boolean asks(org.benchlore.plan.card.CardLine box, EObject owner) {
        return box instanceof org.benchlore.plan.card.CardLine.Value value && value.asked() == owner
                || box instanceof org.benchlore.plan.card.CardLine.Torque torque && torque.asked() == owner;
    }
}
