// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** Asks for one line without which something cannot be done, and goes on with it. */
final class Question extends InputDialog {

    private final Consumer<String> answered;

    Question(Shell shell, String title, String question, Consumer<String> answered) {
        super(shell, title, question, "", text -> text.isBlank() ? Messages.writeSomething : null);
        this.answered = answered;
        setBlockOnOpen(false);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = super.createDialogArea(parent);
        getText().setData(Ids.WIDGET_ID, "desk.answer");
        return area;
    }

    @Override
    protected void okPressed() {
        super.okPressed();
        answered.accept(getValue().strip());
    }
}
