// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One edit over several files. It is done in all of them or in none, and undone in all of them or in none, from
 * whichever session one asks.
 */
public final class SharedEdit {

    private final String label;
    private final List<EditSession> sessions = new ArrayList<>();

    private SharedEdit(String label) {
        this.label = label;
    }

    /**
     * Does an edit in several sessions.
     *
     * @param label what it does, as it follows 'Undo'
     * @param edits an edit for each session, in the order in which they are done
     * @throws IllegalArgumentException if one of them cannot be done; then none is
     */
    public static void execute(String label, Map<EditSession, Edit> edits) {
        var shared = new SharedEdit(label);
        var parts = new LinkedHashMap<>(edits);
        parts.values().removeIf(edit -> edit.command().isEmpty());
        shared.sessions.addAll(parts.keySet());
        var done = new ArrayList<EditSession>();
        try {
            parts.forEach((session, edit) -> {
                session.history().execute(new Edit(label, edit.command(), Optional.empty()), Optional.of(shared));
                done.add(session);
            });
        } catch (RuntimeException e) {
            done.forEach(session -> session.history().takeBack());
            throw e;
        }
    }

    /** Why it cannot be undone now, if so. */
    Optional<String> undoProblem() {
        return problem("undone", sessions.stream().filter(session -> !isAt(session.history().last())).toList());
    }

    /** Why it cannot be done again now, if so. */
    Optional<String> redoProblem() {
        return problem("done again", sessions.stream().filter(session -> !isAt(session.history().next())).toList());
    }

    private boolean isAt(Optional<Entry> entry) {
        return entry.flatMap(Entry::shared).filter(shared -> shared == this).isPresent();
    }

    private Optional<String> problem(String what, List<EditSession> inTheWay) {
        var closed = sessions.stream().filter(EditSession::isClosed).findFirst();
        if (closed.isPresent()) {
            return Optional.of("'" + label + "' cannot be " + what + ": it changed '" + closed.get().title()
                    + "' too, which is closed; change both by hand");
        }
        return inTheWay.stream().findFirst().map(session -> "'" + label + "' cannot be " + what + " yet: it changed '"
                + session.title() + "' too, which was changed since; undo that first");
    }

    void undo() {
        sessions.forEach(session -> session.history().undoHere());
    }

    void redo() {
        sessions.forEach(session -> session.history().redoHere());
    }
}
