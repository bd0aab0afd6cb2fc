// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.edit.desk.NoteStatuses;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;

/** A note holds what its status says. */
final class NoteStatusUnfounded extends ElementRule {

    NoteStatusUnfounded() {
        super(new About("note-status-unfounded", Severity.WARNING,
                "A note holds what its status says",
                "Its weight in a diagnosis is greater than what is known."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        if (subject.top() instanceof FieldNote note) {
            var lacks = NoteStatuses.lacks(note, note.getStatus()).stream()
                    .filter(lack -> !(note.getStatus() == NoteStatus.HELD && lack.feature() == Literals.FIELD_NOTE__VERIFICATION))
                    .map(NoteStatuses.Lack::sentence).toList();
            if (!lacks.isEmpty()) {
                findings.add(note, String.join("; ", lacks));
            }
        }
    }
}
