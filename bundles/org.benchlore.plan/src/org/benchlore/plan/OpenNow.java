// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.benchlore.model.Access;
import org.benchlore.plan.search.PlanException;

/** What is open now: what was said, and what must be open for it. */
final class OpenNow {

    private final PlanBook book;
    private final List<String> said;
    private final Set<String> remarks;

    OpenNow(PlanBook book, List<String> said, Set<String> remarks) {
        this.book = book;
        this.said = said;
        this.remarks = remarks;
    }

    /** What is said to be open, and what must be open for it because there is no choice. */
    List<String> ids() throws PlanException {
        var open = new TreeSet<String>();
        var left = new ArrayList<>(said);
        var also = new TreeSet<String>();
        while (!left.isEmpty()) {
            var id = left.remove(0);
            var access = book.accesses().get(id);
            if (access == null) {
                throw new PlanException("'" + book.machine().getId() + "' has no access '" + id + "'; it has "
                        + String.join(", ", book.accesses().keySet()), List.of(id));
            }
            if (open.add(id)) {
                left.addAll(implied(access, open, also));
            }
        }
        if (!also.isEmpty()) {
            remarks.add("Taken as open as well, because something open needs it: " + String.join(", ", also)
                    + "; tick the other one if it is another, on the command line --open.");
        }
        if (!open.isEmpty()) {
            remarks.add("The machine stands open: before the first line somebody looks that all of it is as it is taken to be,"
                    + " supports and stands, pressure off, switched off and locked.");
        }
        return List.copyOf(open);
    }

    private List<String> implied(Access access, Set<String> open, Set<String> also) {
        var implied = new ArrayList<String>();
        for (var any : access.getNeeds()) {
            var need = book.ofThisMachine(any.getAnyOf());
            boolean isNamed = need.stream().anyMatch(it -> said.contains(it) || open.contains(it));
            if (!need.isEmpty() && !isNamed) {
                var first = need.get(0);
                implied.add(first);
                also.add(title(first) + (need.size() > 1 ? " (or another of " + String.join(", ", need) + ")" : ""));
            }
        }
        return implied;
    }

    private String title(String id) {
        return "'" + Titles.of(book.accesses().get(id)) + "'";
    }
}
