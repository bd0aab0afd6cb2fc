// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.ui.Failures;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.widgets.Shell;

/** Does work away from the window's thread while a dialog shows how far it is and lets somebody stop it. */
final class Waiting {

    /** Work that may fail with a plain sentence. */
    @FunctionalInterface
    interface Work<T> {
        T run(IProgressMonitor monitor) throws Exception;
    }

    private final Shell shell;
    private final Consumer<String> failed;

    /** What failed is told as one sentence. */
    Waiting(Shell shell, Consumer<String> failed) {
        this.shell = shell;
        this.failed = failed;
    }

    /** Returns what the work gave, or nothing if it failed or was stopped, which has been said then. */
    <T> Optional<T> on(Work<T> work) {
        var result = new ArrayList<T>();
        try {
            new ProgressMonitorDialog(shell).run(true, true, monitor -> {
                try {
                    result.add(work.run(monitor));
                } catch (Exception e) {
                    throw new InvocationTargetException(e);
                }
            });
            return Optional.of(result.get(0));
        } catch (InvocationTargetException e) {
            say(e.getCause());
        } catch (InterruptedException e) {
            failed.accept(Messages.stopped);
        }
        return Optional.empty();
    }

    private void say(Throwable cause) {
        if (cause instanceof OperationCanceledException) {
            failed.accept(Messages.stopped);
        } else {
            Failures.log(String.valueOf(cause.getMessage()), cause);
            failed.accept(String.valueOf(cause.getMessage()));
        }
    }
}
