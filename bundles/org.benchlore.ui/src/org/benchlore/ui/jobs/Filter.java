// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs;

import java.util.function.Predicate;

/** Which jobs the list shows. */
enum Filter {
    /** Whatever is not closed. */
    OPEN(line -> !line.isClosed()),
    /** What waits for parts or an answer. */
    WAITING(JobLine::isWaiting),
    /** What was handed back. */
    CLOSED(JobLine::isClosed),
    /** Every job. */
    ALL(line -> true);

    private final Predicate<JobLine> shown;

    Filter(Predicate<JobLine> shown) {
        this.shown = shown;
    }

    boolean shows(JobLine line) {
        return shown.test(line);
    }

    String words() {
        return switch (this) {
            case OPEN -> Messages.open;
            case WAITING -> Messages.waiting;
            case CLOSED -> Messages.closed;
            case ALL -> Messages.all;
        };
    }
}
