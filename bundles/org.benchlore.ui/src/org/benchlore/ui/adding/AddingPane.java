// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.store.Catalogue;
import org.benchlore.ui.page.PageCanvas;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** The widgets of the view: the form; beside it the proposals, and below them why, and the figures it stands on. */
final class AddingPane {

    private static final int[] SHARES = {27, 73};
    private static final int[] BESIDE = {58, 42};
    private static final int[] BELOW = {45, 55};
    private static final int LEAST_BESIDE = 760;

    private final AddingForm form;
    private final AddingBar bar;
    private final SashForm answer;
    private final SashForm detail;
    private final ProposalTable proposals;
    private final AdviceRow advice;
    private final PageCanvas page;
    private final FigureTable figures;
    private Optional<Weighed> shown = Optional.empty();

    AddingPane(Composite parent, Supplier<Optional<Catalogue>> catalogue, int zoom, Follower follower) {
        var sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        form = new AddingForm(sash, catalogue, follower);
        var right = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(right);
        bar = new AddingBar(right, follower);
        answer = new SashForm(right, SWT.VERTICAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(answer);
        var above = new Composite(answer, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 0).spacing(0, 4).applyTo(above);
        proposals = new ProposalTable(above, this::select, this::tick);
        advice = new AdviceRow(above);
        detail = new SashForm(answer, SWT.HORIZONTAL | SWT.SMOOTH);
        page = new PageCanvas(detail, "adding.page", zoom, follower::open);
        figures = new FigureTable(detail, follower);
        sash.setWeights(SHARES);
        answer.setWeights(30, 70);
        detail.setWeights(BESIDE);
        answer.addListener(SWT.Resize, event -> turn());
        answer.setMaximizedControl(detail);
        detail.setMaximizedControl(page.control());
    }

    /** Figures stand beside the page where there is room for both, else below it. */
    private void turn() {
        int way = answer.getClientArea().width >= LEAST_BESIDE ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (detail.getOrientation() != way) {
            detail.setOrientation(way);
            detail.setWeights(way == SWT.HORIZONTAL ? BESIDE : BELOW);
            figures.beLow(way == SWT.VERTICAL);
        }
    }

    AddingForm form() {
        return form;
    }

    AddingBar bar() {
        return bar;
    }

    void zoom(int percent) {
        page.zoom(percent);
    }

    void show(Weighed weighed) {
        shown = Optional.of(weighed);
        answer.setMaximizedControl(weighed.isEmpty() ? detail : null);
        detail.setMaximizedControl(weighed.isEmpty() ? page.control() : null);
        proposals.show(weighed.adding().map(Adding::proposals).orElse(List.of()));
        if (weighed.isEmpty()) {
            page.show(weighed.instead(), Map.of());
        }
        select();
        tick();
    }

    private void select() {
        var one = shown.flatMap(weighed -> proposals.selected().flatMap(weighed::proposal));
        advice.show(one.map(Proposal::id));
        one.ifPresent(it -> {
            page.show(shown.orElseThrow().pages().get(it.id()), Map.of());
            figures.show(Optional.of(it.id()), it.assumptions());
        });
    }

    /** Says what is ticked; what the answer comes to stands in this line. */
    private void tick() {
        var adding = shown.flatMap(Weighed::adding);
        bar.enable(adding.flatMap(Adding::plan).isPresent(), adding.isPresent() && !ticked().isEmpty());
        adding.filter(it -> !it.proposals().isEmpty()).ifPresent(it -> bar.say(new Ticked(it, ticked()).words()));
    }

    Set<String> ticked() {
        return proposals.ticked();
    }

    String advice() {
        return shown.flatMap(Weighed::adding).map(it -> advice.lines(it.proposals())).orElse("");
    }

    /** The cursor goes to what can be added, where there is something, else to what is still to be picked. */
    void focus() {
        if (shown.filter(it -> !it.isEmpty()).isPresent()) {
            proposals.control().setFocus();
        } else {
            form.focus();
        }
    }

    void clear() {
        proposals.untick();
        advice.forget();
        form.clear();
    }
}
