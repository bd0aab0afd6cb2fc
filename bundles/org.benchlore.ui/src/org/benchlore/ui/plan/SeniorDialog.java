// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Person;
import org.benchlore.ui.Ids;
import org.benchlore.ui.PlainDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Asks which senior has looked through a strip that nobody reviewed as a whole. */
final class SeniorDialog extends PlainDialog {

    private static final int WIDTH = 420;

    private final List<Person> seniors;
    private final Consumer<Optional<String>> answered;
    private Optional<String> chosen = Optional.empty();

    SeniorDialog(Shell shell, List<Person> seniors, Consumer<Optional<String>> answered) {
        super(shell, Messages.seniorTitle);
        this.seniors = seniors;
        this.answered = answered;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var question = new Label(area, SWT.WRAP);
        question.setText(seniors.isEmpty() ? Messages.noSenior : Messages.seniorQuestion);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(question);
        choice(area, Messages.notYet, Optional.empty(), 0).setSelection(true);
        for (int i = 0; i < seniors.size(); i++) {
            var title = Optional.ofNullable(seniors.get(i).getTitle()).orElse(seniors.get(i).getId());
            choice(area, title, Optional.of(title), i + 1);
        }
        return area;
    }

    private Button choice(Composite area, String words, Optional<String> senior, int index) {
        var button = new Button(area, SWT.RADIO);
        button.setText(words.replace("&", "&&"));
        button.setData(Ids.WIDGET_ID, "plan.senior." + index);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                chosen = senior;
            }
        });
        return button;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.startJob.replace("&", ""), true)
                .setData(Ids.WIDGET_ID, "plan.senior.start");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void okPressed() {
        super.okPressed();
        answered.accept(chosen);
    }
}
