// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.store.BookFormat;
import org.benchlore.store.LibraryException;

/** Saves several sessions. All are looked at before the first is written, and what was written is told exactly. */
public final class SaveAll {

    private SaveAll() {
    }

    /**
     * What was saved and what was not.
     *
     * @param saved paths in the order in which they were written
     * @param notSaved paths that were not written
     * @param reason why not all were written: a plain sentence, empty if all were
     */
    public record Report(List<String> saved, List<String> notSaved, Optional<String> reason) {

        /**
         * Tells whether everything was saved.
         *
         * @return true if nothing is left
         */
        public boolean isComplete() {
            return reason.isEmpty();
        }
    }

    /**
     * Saves sessions in order; those with nothing to save are passed over.
     *
     * @param sessions the sessions
     * @return what was written; if one cannot be, nothing after it is, and what was written before it is named
     */
    public static Report save(List<EditSession> sessions) {
        var dirty = sessions.stream().filter(EditSession::isDirty).toList();
        for (var session : dirty) {
            var problem = problem(session);
            if (problem.isPresent()) {
                return report(List.of(), dirty, problem.get());
            }
        }
        var saved = new ArrayList<EditSession>();
        for (var session : dirty) {
            var problem = saved(session);
            if (problem.isPresent()) {
                return report(saved, dirty, problem.get());
            }
            saved.add(session);
        }
        return new Report(paths(saved), List.of(), Optional.empty());
    }

    private static Report report(List<EditSession> saved, List<EditSession> all, String reason) {
        var left = all.stream().filter(session -> !saved.contains(session)).toList();
        var told = saved.isEmpty() ? "Nothing was saved: " + reason
                : "Saved: " + String.join(", ", paths(saved)) + ". Not saved: " + String.join(", ", paths(left))
                        + ": " + reason;
        return new Report(paths(saved), paths(left), Optional.of(told));
    }

    private static List<String> paths(List<EditSession> sessions) {
        return sessions.stream().map(EditSession::path).toList();
    }

    private static Optional<String> problem(EditSession session) {
        try {
            var readBack = new BookFormat().read(session.path(), session.bytes());
            return readBack.isWhole() ? session.conflict().map(Conflict::sentence)
                    : Optional.of(readBack.problems().get(0).toString());
        } catch (LibraryException e) {
            return Optional.of(e.getMessage());
        }
    }

    private static Optional<String> saved(EditSession session) {
        try {
            return session.save() instanceof SaveResult.Stopped stopped ? Optional.of(stopped.conflict().sentence())
                    : Optional.empty();
        } catch (LibraryException e) {
            return Optional.of(e.getMessage());
        }
    }
}
