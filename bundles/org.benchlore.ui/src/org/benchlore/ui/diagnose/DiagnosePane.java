// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.benchlore.diagnose.Assessment;
import org.benchlore.model.Address;
import org.benchlore.store.Catalogue;
import org.benchlore.ui.Ids;
import org.benchlore.ui.page.PageCanvas;
import org.benchlore.ui.session.SessionMemory;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.services.IServiceLocator;

/** The widgets of the view: fields and answers in a column; beside it, or below it where the view is narrow and high, the page. */
final class DiagnosePane {

    private static final int COLUMN = 330;
    private static final int LEAST_BESIDE = 2 * COLUMN;

    /**
     * Is told what somebody does.
     *
     * @param changed after a field changed
     * @param answer takes check and result
     * @param takeBack takes the last answer back
     * @param next leads on from an answer
     * @param begin begins a new case
     */
    record Follower(Runnable changed, BiConsumer<String, String> answer, Runnable takeBack, Next next, Runnable begin) {
    }

    /**
     * Leads on from an answer.
     *
     * @param writeDown writes the way down in a note
     * @param intoJob writes it into a job record; a menu may open below the button
     * @param plan plans what is done about a cause; a menu may open below the button
     */
    record Next(Consumer<Assessment> writeDown, BiConsumer<Assessment, Control> intoJob, BiConsumer<Assessment, Control> plan) {
    }

    private final SashForm sash;
    private final ScrolledComposite scroll;
    private final Composite column;
    private final CaseForm form;
    private final AnswerRows answers;
    private final PageCanvas page;
    private final Button takeBack;
    private final Button writeDown;
    private final Button intoJob;
    private final Button plan;
    private Outcome shown = Outcome.refused(Messages.what, false);

    DiagnosePane(Composite parent, Supplier<Optional<Catalogue>> catalogue, IServiceLocator services, Follower follower,
            Consumer<Address> opener) {
        sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        scroll = new ScrolledComposite(sash, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        column = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 6).spacing(6, 3).applyTo(column);
        form = new CaseForm(column, catalogue, new Entry.Follow(follower.changed(), this::fit));
        var bar = bar();
        takeBack = button(bar, "diagnose.takeBack", Messages.takeBack, any -> follower.takeBack().run());
        var next = follower.next();
        writeDown = button(bar, "diagnose.writeDown", Messages.writeDown, any -> shown.assessment().ifPresent(next.writeDown()));
        intoJob = button(bar, "diagnose.intoJob", Messages.intoJob, button -> shown.assessment().ifPresent(answer ->
                next.intoJob().accept(answer, button)));
        plan = button(bar, "diagnose.plan", Messages.plan, button -> shown.assessment().ifPresent(answer ->
                next.plan().accept(answer, button)));
        button(bar, "diagnose.begin", Messages.begin, any -> follower.begin().run());
        answers = new AnswerRows(column, follower.answer(), near -> form.say(near.finding().text(), near.words()), opener);
        scroll.setContent(column);
        scroll.addListener(SWT.Resize, event -> fit());
        page = new PageCanvas(sash, "diagnose.page", services.getService(SessionMemory.class).zoom(), opener);
        parent.addListener(SWT.Resize, event -> turn(parent.getClientArea()));
        turn(parent.getClientArea());
    }

    private Composite bar() {
        var bar = new Composite(column, SWT.NONE);
        var layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginRight = 0;
        bar.setLayout(layout);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(COLUMN / 2, SWT.DEFAULT).applyTo(bar);
        return bar;
    }

    private static Button button(Composite bar, String id, String words, Consumer<Button> action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, (Event event) -> action.accept(button));
        return button;
    }

    private void turn(Rectangle room) {
        if (room.width > 0) {
            boolean isBeside = room.width >= LEAST_BESIDE || room.width > room.height;
            int fields = Math.min(COLUMN, room.width / 2);
            sash.setOrientation(isBeside ? SWT.HORIZONTAL : SWT.VERTICAL);
            sash.setWeights(isBeside ? new int[] {fields, room.width - fields} : new int[] {1, 1});
        }
    }

    CaseForm form() {
        return form;
    }

    /** Takes no answers for now. */
    void rest() {
        answers.rest();
    }

    void show(Outcome outcome, boolean isAnswered) {
        shown = outcome;
        page.show(outcome.page(), Map.of());
        answers.show(outcome.checks(), outcome.nearest());
        takeBack.setEnabled(isAnswered);
        writeDown.setEnabled(outcome.assessment().isPresent());
        intoJob.setEnabled(outcome.assessment().isPresent());
        plan.setEnabled(outcome.assessment().filter(NextSteps::isPlanned).isPresent());
        fit();
    }

    /** Puts the cursor to the next check, or, where nothing is left to check, where the way can be written down. */
    void focusAnswers() {
        if (!answers.focus()) {
            writeDown.setFocus();
        }
    }

    private void fit() {
        int width = scroll.getClientArea().width;
        column.layout(true, true);
        scroll.setMinSize(column.computeSize(width > 0 ? width : COLUMN, SWT.DEFAULT));
        column.layout(true, true);
    }
}
