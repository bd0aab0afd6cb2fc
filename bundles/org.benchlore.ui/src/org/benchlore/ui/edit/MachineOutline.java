// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.edit.EditSession;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.ui.edit.form.ClipKeys;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;

/** The outline of a machine: components, causes, accesses, chains and steps added, moved, duplicated, removed. */
final class MachineOutline {

    private final OutlinePart part;
    private final MachineEdits actions;
    private final Runnable splitHours;

    private MachineOutline(OutlinePart part, MachineEdits actions, Runnable splitHours) {
        this.part = part;
        this.actions = actions;
        this.splitHours = splitHours;
    }

    static OutlinePart create(Composite parent, MachineShape shape, Optional<EditSession> session, ClipKeys clips,
            Consumer<String> say, Runnable focusForm, Runnable splitHours) {
        var part = new OutlinePart(parent, shape, clips);
        session.map(open -> new MachineEdits(open, part.outline(), say, focusForm)).ifPresent(actions ->
                new MachineOutline(part, actions, splitHours).start());
        return part;
    }

    private void start() {
        part.start(actions, this::createAdd, menu -> {
            fill(menu);
            OutlinePart.item(menu, Messages.duplicateMenu, actions::duplicate);
        }, menu -> {
            OutlinePart.item(menu, Messages.deeperMenu, () -> actions.shift(1));
            OutlinePart.item(menu, Messages.outMenu, () -> actions.shift(-1));
            OutlinePart.item(menu, Messages.splitHoursMenu, splitHours);
        });
    }

    private void createAdd(Composite bar) {
        var add = OutlinePart.button(bar, "outline.add", Messages.addKind, () -> { });
        add.setToolTipText(Messages.addKindKeys);
        var menu = new Menu(add);
        fill(menu);
        OutlinePart.dropDown(add, menu);
    }

    private void fill(Menu menu) {
        OutlinePart.item(menu, Messages.addComponentMenu, () -> actions.add(Literals.COMPONENT));
        var within = OutlinePart.item(menu, Messages.addWithinMenu, actions::addWithin);
        var cause = OutlinePart.item(menu, Messages.addCauseMenu, () -> actions.add(Literals.CAUSE));
        OutlinePart.item(menu, Messages.addAccessMenu, () -> actions.add(Literals.ACCESS));
        var step = OutlinePart.item(menu, Messages.addStepOfWorkMenu, () -> actions.add(Literals.STEP));
        OutlinePart.item(menu, Messages.addChainMenu, () -> actions.add(Literals.FUNCTION));
        menu.addListener(SWT.Show, event -> {
            within.setEnabled(actions.hasComponent());
            cause.setEnabled(actions.hasComponent());
            step.setEnabled(actions.takesSteps());
        });
    }
}
