// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.util.List;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Says what was done, in words that can be copied. */
final class ResultDialog extends PlainDialog {

    private static final int WIDTH = 520;
    private static final int HEIGHT = 180;

    private final String sentence;
    private final List<String> lines;

    ResultDialog(Shell shell, String title, String sentence, List<String> lines) {
        super(shell, title);
        this.sentence = sentence;
        this.lines = lines;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var text = new Text(area, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        text.setData(Ids.WIDGET_ID, "pack.result");
        text.setText(lines.isEmpty() ? sentence : sentence + "\n\n" + String.join("\n", lines));
        Keys.name(text, getShell().getText());
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(text);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, IDialogConstants.OK_LABEL, true).setData(Ids.WIDGET_ID, "pack.result.ok");
    }
}
