// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Recorded;

/** What is said of a list agrees with the list. */
final class ListContradicted extends ElementRule {

    ListContradicted() {
        super(new About("list-contradicted", Severity.ERROR,
                "What is said of a list agrees with the list",
                "It says that there is no hazard, and there is one."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.works().forEach(work -> RecordedList.of(work).forEach(list -> report(list, findings)));
        subject.procedure().ifPresent(procedure -> RecordedList.of(procedure).forEach(list -> report(list, findings)));
    }

    private static void report(RecordedList list, Findings findings) {
        if (list.said() == Recorded.NONE && list.count() > 0) {
            findings.add(list.owner(), "It says that there are no " + list.name() + ", but there are " + list.count()
                    + ": say 'listed', or remove them", "Say 'listed'",
                    (session, element) -> session.edits().value(element, list.field(), Recorded.LISTED));
        } else if (list.said() == Recorded.LISTED && list.count() == 0) {
            findings.add(list.owner(), "It says that the " + list.name() + " are listed, but there is none: add them, or say 'none'",
                    "Say that nobody has looked", (session, element) -> session.edits().value(element, list.field(), null));
        }
    }
}
