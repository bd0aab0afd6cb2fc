// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.model.JobState;
import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.edit.form.ComboKeys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What stands above the card: where the job stands, who fills it in, what leads on. */
final class JobBar {

    private static final List<JobState> STATES = List.of(JobState.NOT_RECORDED, JobState.OPEN, JobState.WAITING_FOR_PARTS,
            JobState.WAITING_FOR_ANSWER, JobState.CLOSED);

    private final Composite bar;
    private final Combo state;
    private final WhoChoice who;
    private final Label standing;

    JobBar(Composite parent, Tools tools, Consumer<JobState> stateChosen, Runnable nextRound, LeadOn leads) {
        var frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(10, 2).spacing(0, 2).applyTo(frame);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(frame);
        standing = new Label(frame, SWT.WRAP);
        standing.setData(Ids.WIDGET_ID, "job.standing");
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(standing);
        bar = new Composite(frame, SWT.NONE);
        var layout = new RowLayout();
        layout.center = true;
        layout.marginLeft = 0;
        bar.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(bar);
        state = new Combo(cell(Messages.stands), SWT.READ_ONLY | SWT.DROP_DOWN);
        state.setData(Ids.WIDGET_ID, "job.state");
        Keys.name(state, Messages.stands);
        STATES.forEach(one -> state.add(Labels.of(one)));
        ComboKeys.install(state);
        state.addListener(SWT.Selection, event -> stateChosen.accept(STATES.get(state.getSelectionIndex())));
        who = new WhoChoice(cell(Messages.who), tools, "job.who", Messages.whoName);
        button("job.round", Messages.nextRound, nextRound);
        button("job.plan", Messages.planFromHere, leads::plan);
        button("job.diagnose", Messages.diagnose, leads::diagnose);
        if (leads.canAdd()) {
            button("job.adding", Messages.worthAdding, leads::adding);
        }
        button("job.note", Messages.writeNote, leads::note);
    }

    private Composite cell(String words) {
        var cell = new Composite(bar, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(cell);
        var label = new Label(cell, SWT.NONE);
        label.setText(words);
        GridDataFactory.swtDefaults().applyTo(label);
        return cell;
    }

    private void button(String id, String words, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
    }

    Optional<Address> who() {
        return who.chosen();
    }

    void show(JobState now, String sentence) {
        state.select(STATES.indexOf(now));
        var words = sentence.replace("&", "&&");
        if (!words.equals(standing.getText())) {
            standing.setText(words);
            standing.getParent().getParent().layout(true, true);
        }
    }
}
