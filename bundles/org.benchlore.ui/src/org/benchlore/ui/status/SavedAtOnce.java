// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.status;

import java.util.Optional;

import org.benchlore.edit.desk.QuickChange;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

/** Makes changes that are saved at once, says what was done and lets one key take them back. */
public final class SavedAtOnce {

    private final IWorkbenchWindow window;

    /** Makes and saves a change. */
    public interface Change {

        /**
         * Does it.
         *
         * @return takes it back; empty if the element is being edited, where it is saved and undone with the rest
         * @throws LibraryException if it cannot be saved
         * @throws IllegalArgumentException with a plain sentence if something stands against it
         */
        Optional<QuickChange> make() throws LibraryException;
    }

    /**
     * Makes it.
     *
     * @param window where it is said
     */
    public SavedAtOnce(IWorkbenchWindow window) {
        this.window = window;
    }

    /**
     * Makes a change, or says why it cannot be made.
     *
     * @param change makes it
     * @param sentence what was done then
     */
    public void make(Change change, String sentence) {
        if (window.getService(LibrarySession.class).current().filter(opened -> opened.library().isWritable()).isEmpty()) {
            say(Messages.nothingChanged);
            return;
        }
        try {
            change.make().ifPresentOrElse(made -> window.getService(LastChange.class).done(window,
                    sentence + " " + Messages.takesBack, () -> {
                        made.takeBack();
                        return NLS.bind(Messages.takenBack, made.label());
                    }), () -> say(sentence + " " + Messages.inEditor));
        } catch (LibraryException | IllegalArgumentException e) {
            say(e.getMessage());
        }
    }

    private void say(String sentence) {
        window.getService(LastChange.class).say(window, sentence);
    }
}
