// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.Sessions;
import org.benchlore.model.TopElement;
import org.benchlore.store.LibraryException;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * One change of one element, made and saved at once, that can be taken back. What is being edited elsewhere is changed
 * there, to be saved and undone with the rest.
 */
public final class QuickChange {

    private final Sessions sessions;
    private final String label;
    private final TopElement before;
    private final String after;

    private QuickChange(Sessions sessions, String label, TopElement before, String after) {
        this.sessions = sessions;
        this.label = label;
        this.before = before;
        this.after = after;
    }

    /** Makes an edit in a session, or says in a plain sentence what is missing for it. */
    public interface Maker {

        /**
         * Makes the edit.
         *
         * @param session the session of the element
         * @return the edit
         * @throws IllegalArgumentException with a plain sentence if something is missing for it
         */
        Edit in(EditSession session);
    }

    /**
     * Makes a change and saves it.
     *
     * @param sessions the library's sessions
     * @param path path of the element's file
     * @param maker makes the edit
     * @return what can be taken back; empty if the element is being edited, where it is undone with the rest
     * @throws LibraryException if the file cannot be edited or was not saved
     * @throws IllegalArgumentException with a plain sentence if something is missing for it
     */
    public static Optional<QuickChange> make(Sessions sessions, String path, Maker maker) throws LibraryException {
        var open = sessions.find(path);
        if (open.isPresent()) {
            open.get().execute(maker.in(open.get()));
            return Optional.empty();
        }
        try (var session = sessions.open(path)) {
            var before = EcoreUtil.copy(session.element());
            var edit = maker.in(session);
            session.execute(edit);
            if (session.save() instanceof SaveResult.Stopped stopped) {
                throw new LibraryException(stopped.conflict().sentence());
            }
            return sessions.library().file(path)
                    .map(file -> new QuickChange(sessions, edit.label(), before, file.hash()));
        }
    }

    /**
     * Returns what the change was, in words.
     *
     * @return words as they follow 'Undo'
     */
    public String label() {
        return label;
    }

    /**
     * Takes it back. If the element was saved elsewhere since, nothing is taken back.
     *
     * @throws LibraryException if the file was changed since, or cannot be written
     */
    public void takeBack() throws LibraryException {
        sessions.library().save(before, Optional.of(after));
    }
}
