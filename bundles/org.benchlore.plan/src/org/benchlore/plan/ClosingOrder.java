// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.List;
import java.util.Set;

/** Which of the things done after closing comes before which. */
final class ClosingOrder {

    private final PlanBook book;
    private final List<String> closings;

    ClosingOrder(PlanBook book, List<String> closings) {
        this.book = book;
        this.closings = closings;
    }

    /** Whether one must wait for another one that is not done yet. */
    boolean mustWait(String id, Set<String> left) {
        var early = book.ids(book.known(id).getBefore());
        return left.stream().anyMatch(other -> !other.equals(id) && asks(other, id))
                || early.stream().anyMatch(left::contains);
    }

    /** Whether one thing done after closing asks for another one after it. */
    private boolean asks(String one, String other) {
        return book.ids(book.known(one).getAfterClosing()).contains(other);
    }

    /** How many others ask for it after them; the search has refused any that ask for each other. */
    int depth(String id) {
        return (int) closings.stream().filter(other -> asks(other, id)).count();
    }

    /** Filling and bleeding, then adjusting, then teaching in, then looking whether all is well. */
    int rank(String id) {
        return switch (book.known(id).getKind()) {
            case RENEW, OVERHAUL, SERVICE -> 0;
            case ADJUST -> 1;
            case TEACH_IN -> 2;
            case NOT_RECORDED, INSPECT, TEST, DIAGNOSE -> 3;
        };
    }
}
