// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import org.benchlore.ui.Ids;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What can be done with a plan, and a line that says what was done. */
final class PlanBar {

    private final Button card;
    private final Button job;
    private final Button worth;
    private final Label said;

    PlanBar(Composite parent, Runnable printCard, Runnable startJob, Runnable weigh, Runnable startOver) {
        var bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        GridLayoutFactory.fillDefaults().numColumns(5).margins(4, 4).spacing(6, 0).applyTo(bar);
        card = button(bar, Messages.printCard, "plan.printCard", printCard);
        job = button(bar, Messages.startJob, "plan.startJob", startJob);
        worth = button(bar, Messages.worthAdding, "plan.worthAdding", weigh);
        button(bar, Messages.startOver, "plan.startOver", startOver);
        said = new Label(bar, SWT.WRAP);
        said.setData(Ids.WIDGET_ID, "plan.said");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(100, SWT.DEFAULT).applyTo(said);
        enable(false);
    }

    private static Button button(Composite bar, String words, String id, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(button);
        return button;
    }

    void enable(boolean hasPlan) {
        card.setEnabled(hasPlan);
        job.setEnabled(hasPlan);
        worth.setEnabled(hasPlan);
    }

    void say(String sentence) {
        if (!said.isDisposed()) {
            said.setText(sentence.replace("&", "&&"));
            said.setToolTipText(sentence.replace("&", "&&"));
            said.getParent().getParent().layout(true, true);
        }
    }
}
