// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;

import org.benchlore.model.Kind;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.edit.form.ComboKeys;
import org.benchlore.ui.look.Words;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;

/** Asks what a new element is and what it is called, from which its id is made; a note needs no title. */
public final class NewDialog extends PlainDialog {

    private static final List<Kind> KINDS = List.of(Kind.NOTE, Kind.PROCEDURE, Kind.PART, Kind.TOOL, Kind.SUPPLY,
            Kind.CODE, Kind.DOCUMENT, Kind.MACHINE, Kind.UNIT, Kind.JOB);
    private static final int WIDTH = 420;

    private final IWorkbenchWindow window;
    private final Kind first;
    private Combo kind;
    private Text title;

    /**
     * Makes a dialog.
     *
     * @param window where the editor opens
     * @param first the kind that is chosen at first
     */
    public NewDialog(IWorkbenchWindow window, Kind first) {
        super(window.getShell(), Messages.newTitle);
        this.window = window;
        this.first = first;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        new Label(area, SWT.NONE).setText(Messages.newKind);
        kind = new Combo(area, SWT.READ_ONLY);
        kind.setData(Ids.WIDGET_ID, "new.kind");
        Keys.name(kind, Messages.newKindName);
        KINDS.forEach(one -> kind.add(Words.one(one)));
        ComboKeys.install(kind);
        kind.select(Math.max(0, KINDS.indexOf(first)));
        kind.addListener(SWT.Selection, event -> updateButtons());
        new Label(area, SWT.NONE).setText(Messages.newName);
        title = new Text(area, SWT.BORDER);
        title.setData(Ids.WIDGET_ID, "new.title");
        Keys.name(title, Messages.newNameName);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(title);
        title.addModifyListener(event -> updateButtons());
        // The kind is chosen by arrows without leaving the title.
        Keys.on(title, SWT.ARROW_DOWN, () -> ComboKeys.choose(kind, kind.getSelectionIndex() + 1));
        Keys.on(title, SWT.ARROW_UP, () -> ComboKeys.choose(kind, kind.getSelectionIndex() - 1));
        title.setFocus();
        return area;
    }

    private Kind chosen() {
        return KINDS.get(kind.getSelectionIndex());
    }

    @Override
    protected Control createContents(Composite parent) {
        var contents = super.createContents(parent);
        updateButtons();
        return contents;
    }

    private void updateButtons() {
        var ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(chosen() == Kind.NOTE || !title.getText().isBlank());
        }
    }

    @Override
    protected void okPressed() {
        var what = chosen();
        var name = title.getText();
        close();
        new EditOpener(window.getActivePage()).create(what, name);
    }
}
