// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.lang.reflect.InvocationTargetException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.Conflict;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveResult;
import org.benchlore.model.compare.Side;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.operation.ModalContext;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Saves a session and asks about what was changed on the disk meanwhile. */
final class Saving {

    private final Shell shell;
    private final EditSession session;

    Saving(Shell shell, EditSession session) {
        this.shell = shell;
        this.session = session;
    }

    /** Saves; tells whether that was done. The window goes on while the file is written. */
    boolean save(IProgressMonitor monitor) {
        try {
            var result = write(monitor);
            while (result instanceof SaveResult.Stopped stopped) {
                if (!answer(stopped.conflict())) {
                    return false;
                }
                result = write(monitor);
            }
            return true;
        } catch (LibraryException e) {
            Failures.show(Messages.saveFailed, e.getMessage(), e);
            return false;
        }
    }

    private SaveResult write(IProgressMonitor monitor) throws LibraryException {
        var pending = session.beginSave();
        monitor.beginTask(NLS.bind(Messages.saving, session.title()), IProgressMonitor.UNKNOWN);
        try {
            ModalContext.run(progress -> pending.run(), true, monitor, shell.getDisplay());
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            // Nobody interrupts it: the monitor is not asked whether to stop in the middle of a file.
            Thread.currentThread().interrupt();
        } finally {
            monitor.done();
        }
        return session.endSave(pending);
    }

    private boolean answer(Conflict conflict) {
        if (conflict instanceof Conflict.Changed changed) {
            var answers = answers(changed);
            answers.ifPresent(given -> session.settle(changed, given));
            return answers.isPresent();
        }
        if (conflict instanceof Conflict.Deleted deleted) {
            int chosen = new MessageDialog(shell, Messages.deletedTitle, null, deleted.sentence(),
                    MessageDialog.QUESTION, 0,
                    Messages.saveAnew, IDialogConstants.CANCEL_LABEL).open();
            if (chosen == 0) {
                session.keep(deleted);
            }
            return chosen == 0;
        }
        MessageDialog.openError(shell, Messages.saveFailed, conflict.sentence());
        return false;
    }

    /** An answer can bring up a further question; empty if the person does not want to answer now. */
    private Optional<Map<String, Side>> answers(Conflict.Changed changed) {
        var given = new HashMap<String, Side>();
        var open = changed.questions();
        do {
            var dialog = new ConflictDialog(shell, session.title(), open);
            if (dialog.open() != Window.OK) {
                return Optional.empty();
            }
            given.putAll(dialog.answers());
            open = changed.merge().decided(given).open();
        } while (!open.isEmpty());
        return Optional.of(given);
    }
}
