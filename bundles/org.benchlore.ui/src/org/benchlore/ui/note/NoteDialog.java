// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.time.Clock;
import java.util.Optional;
import java.util.random.RandomGenerator;

import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.workshop.NewNote;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;

/**
 * Takes a note: only what was learned is required. It is saved away from the window's thread and then its page opens;
 * if it cannot be saved, the dialog stays with what was written and says why.
 */
public final class NoteDialog extends Dialog {

    private static final int WIDTH = 560;
    private static final int LINES = 8;

    private final IWorkbenchWindow window;
    private final LibrarySession session;
    private final String begun;
    private Text text;
    private Label problem;

    /**
     * Makes a dialog.
     *
     * @param window opens the note's page
     * @param begun what was written already, may be empty
     */
    public NoteDialog(IWorkbenchWindow window, String begun) {
        super(window.getShell());
        this.window = window;
        this.session = window.getService(LibrarySession.class);
        this.begun = begun;
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setBlockOnOpen(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        new Label(area, SWT.NONE).setText(Messages.whatWasLearned);
        createText(area);
        problem = new Label(area, SWT.WRAP);
        problem.setData(Ids.WIDGET_ID, "note.problem");
        problem.setText(Messages.howToSave);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, 2 * text.getLineHeight()).applyTo(problem);
        return area;
    }

    private void createText(Composite area) {
        text = new Text(area, SWT.MULTI | SWT.BORDER | SWT.WRAP | SWT.V_SCROLL);
        text.setData(Ids.WIDGET_ID, "note.text");
        text.setText(begun);
        text.setSelection(begun.length());
        Keys.name(text, Messages.textName);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, LINES * text.getLineHeight()).applyTo(text);
        text.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        text.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.CR && (event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1) {
                event.doit = false;
                okPressed();
            }
        });
        text.addModifyListener(event -> updateButtons());
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.save, true).setData(Ids.WIDGET_ID, "note.save");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        updateButtons();
    }

    private void updateButtons() {
        getButton(IDialogConstants.OK_ID).setEnabled(!text.getText().isBlank() && text.getEditable());
    }

    @Override
    protected void okPressed() {
        if (text.getText().isBlank() || !text.getEditable()) {
            return;
        }
        session.current().ifPresentOrElse(this::save, () -> refuse(Messages.noLibrary));
    }

    private void save(Opened opened) {
        var written = text.getText();
        var thread = new WindowThread(text);
        setSaving(true);
        var job = Job.create(Messages.saving, monitor -> {
            try {
                var row = new NewNote(opened.library(), Clock.systemDefaultZone(), RandomGenerator.getDefault())
                        .write(written, Optional.empty(), Optional.empty());
                thread.run(() -> saved(row));
            } catch (LibraryException e) {
                thread.run(() -> refuse(e.getMessage()));
            }
        });
        job.schedule();
    }

    private void saved(Row row) {
        close();
        new PageOpener(window.getActivePage(), session).open(row.address());
    }

    private void refuse(String sentence) {
        setSaving(false);
        problem.setText(sentence.replace("&", "&&"));
        text.setFocus();
    }

    private void setSaving(boolean saving) {
        text.setEditable(!saving);
        updateButtons();
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        var size = super.getInitialSize();
        var room = window.getShell().getSize();
        return new Point(Math.min(size.x, room.x), Math.min(size.y, room.y));
    }
}
