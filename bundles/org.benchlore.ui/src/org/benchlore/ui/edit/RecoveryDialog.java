// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;

import org.benchlore.edit.draft.Draft;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;

/** Offers what was being written when the program ended without saving it. What is left alone is offered again. */
public final class RecoveryDialog extends PlainDialog {

    private static final int WIDTH = 420;

    private final IWorkbenchWindow window;
    private final Editing editing;
    private final List<Draft> drafts;
    private int left;

    private RecoveryDialog(IWorkbenchWindow window, List<Draft> drafts) {
        super(window.getShell(), Messages.recoveryTitle);
        this.window = window;
        this.editing = window.getService(Editing.class);
        this.drafts = drafts;
        this.left = drafts.size();
    }

    /**
     * Opens the dialog if the library that was opened has drafts.
     *
     * @param window the window
     */
    public static void offer(IWorkbenchWindow window) {
        var drafts = window.getService(Editing.class).drafts();
        if (!drafts.isEmpty()) {
            new RecoveryDialog(window, drafts).open();
        }
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var intro = new Label(area, SWT.WRAP);
        intro.setText(Messages.recoveryIntro);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(intro);
        var grid = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 8).applyTo(grid);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(grid);
        for (int i = 0; i < drafts.size(); i++) {
            create(grid, drafts.get(i), i);
        }
        return area;
    }

    private void create(Composite grid, Draft draft, int number) {
        var words = new Label(grid, SWT.WRAP);
        words.setText(words(draft).replace("&", "&&"));
        words.setData(Ids.WIDGET_ID, "recovery.draft." + number);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(words);
        var restore = button(grid, Messages.restore, draft, "recovery.restore." + number);
        var discard = button(grid, Messages.discard, draft, "recovery.discard." + number);
        restore.addListener(SWT.Selection, event -> {
            if (restore(draft)) {
                done(words, restore, discard, Messages.restored);
            }
        });
        discard.addListener(SWT.Selection, event -> {
            if (discard(draft)) {
                done(words, restore, discard, Messages.discarded);
            }
        });
    }

    private static Button button(Composite grid, String words, Draft draft, String id) {
        var button = new Button(grid, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        Keys.name(button, words + ": " + draft.title());
        return button;
    }

    private static String words(Draft draft) {
        var when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM).withZone(ZoneId.systemDefault())
                .format(draft.when());
        return draft.title() + "\n" + NLS.bind(switch (draft.base()) {
            case SAME -> Messages.draftSame;
            case NEW -> Messages.draftNew;
            case CHANGED -> Messages.draftChanged;
            case GONE -> Messages.draftGone;
        }, when);
    }

    private boolean restore(Draft draft) {
        try {
            new EditOpener(window.getActivePage()).show(editing.restore(draft));
            return true;
        } catch (LibraryException e) {
            Failures.show(Messages.restoreFailed, e.getMessage(), e);
            return false;
        }
    }

    private boolean discard(Draft draft) {
        try {
            editing.discard(draft);
            return true;
        } catch (LibraryException e) {
            Failures.show(Messages.discardFailed, e.getMessage(), e);
            return false;
        }
    }

    private void done(Label words, Button restore, Button discard, String what) {
        words.setText(words.getText().lines().findFirst().orElse("") + "\n" + what);
        restore.setEnabled(false);
        discard.setEnabled(false);
        left--;
        if (left == 0) {
            close();
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.recoveryLater, false)
                .setData(Ids.WIDGET_ID, "recovery.later");
    }
}
