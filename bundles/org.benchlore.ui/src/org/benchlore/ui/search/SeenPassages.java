// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.search.Hit;
import org.benchlore.search.Passage;
import org.benchlore.store.Row;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.eclipse.swt.widgets.Display;

/**
 * Passages of the rows that are painted. A row that is painted without one is asked for soon after, away from the
 * window's thread; until then it shows its passage for the text before, so that nothing flickers.
 */
final class SeenPassages {

    private static final int PAUSE = 30;

    private final Map<String, Passage> known = new HashMap<>();
    private final Map<String, Passage> older = new HashMap<>();
    private final Map<String, Row> wanted = new LinkedHashMap<>();
    private final LatestJob<Wish, List<Passage>> job;
    private final Display display;
    private final Runnable ask = this::ask;
    private Question question;
    private boolean waiting;

    private record Wish(Question question, List<Row> rows) {
    }

    /** Makes it; {@code arrived} is run when passages have come. To be called on the window's thread. */
    SeenPassages(WindowThread window, Runnable arrived) {
        display = Display.getCurrent();
        job = new LatestJob<>(Messages.searching, SeenPassages::find, window, (wish, passages) -> {
            keep(wish, passages);
            arrived.run();
        });
    }

    private static List<Passage> find(Wish wish) {
        return wish.question().library().library().search().passages(wish.question().query(), wish.rows());
    }

    /** Says which question the painted rows answer. */
    void of(Question next) {
        if (!next.hasTextOf(question)) {
            job.forget();
            older.clear();
            older.putAll(known);
            known.clear();
            wanted.clear();
        }
        question = next;
    }

    void forget() {
        question = null;
        wanted.clear();
        job.forget();
    }

    /** Returns what is known of a hit, and asks for it where nothing is. */
    Optional<Passage> of(Hit hit) {
        var row = hit.row();
        var passage = known.get(row.path());
        if (passage != null) {
            return Optional.of(passage);
        }
        if (question != null && wanted.putIfAbsent(row.path(), row) == null && !waiting) {
            waiting = true;
            display.timerExec(PAUSE, ask);
        }
        return Optional.ofNullable(older.get(row.path()));
    }

    private void ask() {
        waiting = false;
        if (question != null && !wanted.isEmpty()) {
            job.ask(new Wish(question, List.copyOf(wanted.values())), 0);
        }
    }

    private void keep(Wish wish, List<Passage> passages) {
        for (int i = 0; i < passages.size(); i++) {
            var path = wish.rows().get(i).path();
            known.put(path, passages.get(i));
            wanted.remove(path);
        }
    }
}
