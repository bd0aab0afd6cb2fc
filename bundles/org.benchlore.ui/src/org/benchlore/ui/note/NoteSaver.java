// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.util.function.Consumer;

import org.benchlore.edit.Sessions;
import org.benchlore.edit.desk.MinuteNote;
import org.benchlore.model.FieldNote;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.benchlore.ui.WindowThread;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/** Saves a minute note beside the window's thread, after the photos that are still being taken in. */
final class NoteSaver {

    private static final int PAUSE = 50;

    private final MinuteNote minute;
    private final Sessions sessions;
    private final PhotoWork photos;
    private final Control control;
    private final WindowThread thread;
    private final Consumer<LoadedFile> saved;
    private final Consumer<String> refused;
    private boolean isWaiting;

    NoteSaver(MinuteNote minute, Sessions sessions, PhotoWork photos, Control control, Consumer<LoadedFile> saved,
            Consumer<String> refused) {
        this.minute = minute;
        this.sessions = sessions;
        this.photos = photos;
        this.control = control;
        this.thread = new WindowThread(control);
        this.saved = saved;
        this.refused = refused;
    }

    /** Saves, and returns whether it waits for a photo first. */
    boolean save() {
        isWaiting = photos.isBusy();
        if (isWaiting) {
            lookAgain();
        } else {
            write();
        }
        return isWaiting;
    }

    /** Waits no longer. */
    void forget() {
        isWaiting = false;
    }

    private void lookAgain() {
        control.getDisplay().timerExec(PAUSE, () -> {
            if (!control.isDisposed() && isWaiting) {
                if (photos.isBusy()) {
                    lookAgain();
                } else {
                    isWaiting = false;
                    write();
                }
            }
        });
    }

    private void write() {
        try {
            var named = minute.named();
            Job.create(Messages.saving, monitor -> {
                write(named);
            }).schedule();
        } catch (LibraryException e) {
            refused.accept(e.getMessage());
        }
    }

    private void write(FieldNote named) {
        try {
            var file = MinuteNote.save(sessions, named);
            thread.run(() -> saved.accept(file));
        } catch (LibraryException e) {
            thread.run(() -> refused.accept(e.getMessage()));
        }
    }
}
