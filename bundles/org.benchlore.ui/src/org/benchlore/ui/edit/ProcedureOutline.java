// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.ui.edit.form.ClipKeys;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** The outline of a procedure: steps and ways added, moved, duplicated, removed, taken from elsewhere. */
final class ProcedureOutline {

    private final OutlinePart part;
    private final StepEdits actions;
    private final Optional<Sessions> sessions;
    private final Runnable splitHours;

    private ProcedureOutline(OutlinePart part, StepEdits actions, Optional<Sessions> sessions, Runnable splitHours) {
        this.part = part;
        this.actions = actions;
        this.sessions = sessions;
        this.splitHours = splitHours;
    }

    static OutlinePart create(Composite parent, ProcedureShape shape, Optional<EditSession> session,
            Optional<Sessions> sessions, ClipKeys clips, Runnable splitHours) {
        var part = new OutlinePart(parent, shape, clips);
        session.map(open -> new StepEdits(open, shape.root(), part.outline())).ifPresent(actions ->
                new ProcedureOutline(part, actions, sessions, splitHours).start());
        return part;
    }

    private void start() {
        part.start(new StepClips(actions), bar -> OutlinePart.button(bar, "outline.addStep", Messages.addStep,
                actions::addStep).setToolTipText(Messages.addStepKeys), this::fill, this::createWays);
    }

    private void fill(Menu menu) {
        OutlinePart.item(menu, Messages.addStepMenu, actions::addStep);
        OutlinePart.item(menu, Messages.duplicateMenu, actions::duplicate);
        OutlinePart.item(menu, Messages.addWayMenu, actions::addWay);
        OutlinePart.item(menu, Messages.insertMenu, this::insert);
        OutlinePart.item(menu, Messages.splitMenu, actions::split);
        OutlinePart.item(menu, Messages.splitHoursMenu, splitHours);
    }

    /** The other ways of the procedure, into which the selected step can be moved. */
    private void createWays(Menu menu) {
        var ways = new Menu(menu);
        var cascade = new MenuItem(menu, SWT.CASCADE);
        cascade.setText(Messages.moveToMenu);
        cascade.setMenu(ways);
        menu.addListener(SWT.Show, event -> {
            for (var old : ways.getItems()) {
                old.dispose();
            }
            actions.otherWays().forEach(way -> OutlinePart.item(ways,
                    part.outline().shape().words(way).replace("&", "&&"), () -> actions.moveTo(way)));
            cascade.setEnabled(ways.getItemCount() > 0);
        });
    }

    /** Asks for steps of another procedure and inserts them behind the one that is shown. */
    private void insert() {
        var shell = part.outline().control().getShell();
        sessions.ifPresent(open -> new InsertDialog(shell, open.library(),
                (String path, List<String> ids) -> actions.insert(open, path, ids)).open());
    }
}
