// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;

import org.benchlore.ui.Ids;
import org.benchlore.ui.PlainDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Says what the record lacks before a job is closed; a person decides whether it is closed all the same. */
final class CloseDialog extends PlainDialog {

    private static final int WIDTH = 480;

    private final List<String> missing;
    private final Runnable close;

    CloseDialog(Shell shell, List<String> missing, Runnable close) {
        super(shell, Messages.closeTitle);
        this.missing = missing;
        this.close = close;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        label(area, Messages.closeMissing);
        missing.forEach(sentence -> label(area, "•  " + sentence));
        return area;
    }

    private static void label(Composite area, String words) {
        var label = new Label(area, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        label.setData(Ids.WIDGET_ID, "job.close.missing");
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(label);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.closeAllTheSame, false).setData(Ids.WIDGET_ID, "job.close.do");
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.notYet, true).setData(Ids.WIDGET_ID, "job.close.not");
    }

    @Override
    protected void okPressed() {
        super.okPressed();
        close.run();
    }
}
