// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import org.benchlore.ui.Ids;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What can be done with the answer, and below it a line that says what is ticked or what was done. */
final class AddingBar {

    private final Button sheet;
    private final Button plan;
    private final Button stop;
    private final Label said;

    AddingBar(Composite parent, Follower follower) {
        var bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 0).applyTo(bar);
        var buttons = new Composite(bar, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
        buttons.setLayout(new RowLayout(SWT.HORIZONTAL));
        sheet = button(buttons, Messages.sheet, "adding.sheet", follower::sheet);
        plan = button(buttons, Messages.intoPlan, "adding.intoPlan", follower::intoPlan);
        button(buttons, Messages.startOver, "adding.startOver", follower::startOver);
        stop = button(buttons, Messages.stop, "adding.stop", follower::stop);
        said = new Label(bar, SWT.WRAP);
        said.setData(Ids.WIDGET_ID, "adding.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(said);
        enable(false, false);
        working(false);
    }

    private static Button button(Composite bar, String words, String id, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    void enable(boolean hasPlan, boolean isTicked) {
        sheet.setEnabled(hasPlan);
        plan.setEnabled(isTicked);
    }

    void working(boolean isWorking) {
        stop.setEnabled(isWorking);
    }

    void say(String sentence) {
        if (!said.isDisposed()) {
            said.setText(sentence.replace("&", "&&"));
            said.setToolTipText(sentence.replace("&", "&&"));
            said.getParent().getParent().layout(true, true);
        }
    }
}
