// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.ui.IMemento;

/** Keeps what was picked for the next start. Ids hold no blanks. */
public final class PlanMemory {

    private static final String SUBJECT = "subject";
    private static final String WORK = "work";
    private static final String OPEN = "open";
    private static final String DONE = "done";

    private PlanMemory() {
    }

    /** Reads what was kept; nothing where nothing was. */
    public static Wanted read(IMemento memento) {
        return memento == null ? Wanted.NOTHING : new Wanted(Optional.ofNullable(memento.getString(SUBJECT)).orElse(""),
                ids(memento, WORK), ids(memento, OPEN), ids(memento, DONE));
    }

    private static List<String> ids(IMemento memento, String key) {
        var words = Optional.ofNullable(memento.getString(key)).orElse("");
        return Arrays.stream(words.split(" ")).filter(id -> !id.isEmpty()).toList();
    }

    /** Keeps what was picked. */
    public static void write(IMemento memento, Wanted wanted) {
        memento.putString(SUBJECT, wanted.subject());
        memento.putString(WORK, String.join(" ", wanted.work()));
        memento.putString(OPEN, String.join(" ", wanted.open()));
        memento.putString(DONE, String.join(" ", wanted.done()));
    }
}
