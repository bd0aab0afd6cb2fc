// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.function.BiConsumer;

import org.benchlore.search.Results;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;

/** Asks twice: nearly at once without counts, and with counts as soon as typing pauses. */
final class Asker {

    private static final int BETWEEN_KEYS = 40;
    private static final int PAUSE = 240;

    private final LatestJob<Question, Results> quick;
    private final LatestJob<Question, Results> counted;

    /** Makes it; {@code done} is told every answer to the latest question on the window's thread. */
    Asker(WindowThread window, BiConsumer<Question, Results> done) {
        quick = new LatestJob<>(Messages.searching, Question::answer, window, done);
        counted = new LatestJob<>(Messages.searching, Question::answer, window, (question, results) -> {
            quick.forget();
            done.accept(question, results);
        });
    }

    void askWhileTyping(Question question) {
        quick.ask(question, BETWEEN_KEYS);
        counted.ask(question.counted(), PAUSE);
    }

    void askNow(Question question) {
        quick.forget();
        counted.ask(question.counted(), 0);
    }

    void forget() {
        quick.forget();
        counted.forget();
    }
}
