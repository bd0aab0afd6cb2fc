// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Recorded;
import org.eclipse.emf.ecore.EObject;

/** Lists that matter for safety say that they are complete or that there is nothing. */
final class ListNotRecorded extends ElementRule {

    ListNotRecorded() {
        super(new About("list-not-recorded", Severity.WARNING,
                "Lists that matter for safety say that they are complete or that there is nothing",
                "An empty list may mean that nobody looked."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.works().forEach(work -> report(RecordedList.of(work), work, findings));
        subject.procedure().ifPresent(procedure -> report(RecordedList.of(procedure), procedure, findings));
    }

    private static void report(List<RecordedList> lists, EObject owner, Findings findings) {
        var open = lists.stream().filter(list -> list.said() == Recorded.NOT_RECORDED).map(RecordedList::name).toList();
        if (!open.isEmpty()) {
            findings.add(owner, "Nobody has said whether the " + String.join(", ", open) + " are complete: look, and say 'listed' or "
                    + "'none'");
        }
    }
}
