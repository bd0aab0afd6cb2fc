// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import java.io.IOException;

import org.benchlore.check.review.Reviews.Standing;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.store.LoadedFile;

/**
 * Keeps a copy of every procedure that reads as it was reviewed: when it is saved, whoever saves it, and before it is
 * edited, so that what was reviewed elsewhere can be told too. What cannot be kept is logged; nobody is held up by it.
 */
public final class ReviewKeeper {

    private final ReviewedCopies copies;

    private ReviewKeeper(ReviewedCopies copies) {
        this.copies = copies;
    }

    /**
     * Begins to keep, for as long as the library is open.
     *
     * @param sessions the library's sessions
     * @param copies where copies are kept
     */
    public static void follow(Sessions sessions, ReviewedCopies copies) {
        var keeper = new ReviewKeeper(copies);
        sessions.onOpen(keeper::opened);
        var library = sessions.library();
        library.onChange(changes -> changes.changed().stream()
                .filter(path -> path.startsWith(Kind.PROCEDURE.folder() + "/"))
                .forEach(path -> library.file(path).flatMap(LoadedFile::root).ifPresent(keeper::keep)));
    }

    private void opened(EditSession session) {
        session.base().flatMap(LoadedFile::root).ifPresent(this::keep);
    }

    private void keep(TopElement element) {
        if (element instanceof Procedure procedure && Reviews.standing(procedure) == Standing.AS_REVIEWED) {
            try {
                copies.keep(procedure);
            } catch (IOException e) {
                System.getLogger(ReviewKeeper.class.getName()).log(System.Logger.Level.WARNING, "No copy of '"
                        + procedure.getTitle() + "' as it was reviewed could be kept: what is changed in it later cannot"
                        + " be told in words", e);
            }
        }
    }
}
