// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;

/** A note that says 'the fix held' says how that was proved. */
final class HeldWithoutProof extends ElementRule {

    HeldWithoutProof() {
        super(new About("held-without-proof", Severity.ERROR,
                "A note that says 'the fix held' says how that was proved",
                "A fix that was only hoped for is taken for proved, and offered."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        if (subject.top() instanceof FieldNote note && note.getStatus() == NoteStatus.HELD && Works.isBlank(note.getVerification())) {
            findings.add(note, "The note says that the fix held, but not how that was proved: write it, or call it seen",
                    "Call it seen",
                    (session, element) -> session.edits().value(element, Literals.FIELD_NOTE__STATUS, NoteStatus.SEEN));
        }
    }
}
