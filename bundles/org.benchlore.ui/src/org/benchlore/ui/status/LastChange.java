// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.status;

import java.util.Optional;

import org.benchlore.store.LibraryException;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchWindow;

/**
 * The change that one key made last and that one key takes back. What was done is said in the status line. Used on the
 * window's thread.
 */
public final class LastChange {

    private Optional<TakeBack> takeBack = Optional.empty();

    /** Takes a change back. */
    public interface TakeBack {

        /**
         * Does it.
         *
         * @return what was taken back, in one sentence
         * @throws LibraryException if it cannot be taken back
         */
        String run() throws LibraryException;
    }

    /**
     * Says what was done.
     *
     * @param window where it was done
     * @param sentence what was done
     * @param undo takes it back
     */
    public void done(IWorkbenchWindow window, String sentence, TakeBack undo) {
        takeBack = Optional.of(undo);
        say(window, sentence);
    }

    /**
     * Takes the last change back, once.
     *
     * @param window where it is said
     */
    public void takeBack(IWorkbenchWindow window) {
        var last = takeBack;
        takeBack = Optional.empty();
        try {
            say(window, last.isPresent() ? last.get().run() : Messages.nothingToTakeBack);
        } catch (LibraryException e) {
            say(window, e.getMessage());
        }
    }

    /** Forgets it, since another library is open. */
    public void forget() {
        takeBack = Optional.empty();
    }

    /**
     * Says something in the status line of the part that is active.
     *
     * @param window the window
     * @param sentence what is said
     */
    public void say(IWorkbenchWindow window, String sentence) {
        line(window).ifPresent(line -> {
            line.setErrorMessage(null);
            line.setMessage(sentence);
        });
    }

    private static Optional<IStatusLineManager> line(IWorkbenchWindow window) {
        var part = window.getActivePage() == null ? null : window.getActivePage().getActivePart();
        if (part instanceof IEditorPart editor) {
            return Optional.of(editor.getEditorSite().getActionBars().getStatusLineManager());
        }
        return part instanceof IViewPart view ? Optional.of(view.getViewSite().getActionBars().getStatusLineManager())
                : Optional.empty();
    }
}
