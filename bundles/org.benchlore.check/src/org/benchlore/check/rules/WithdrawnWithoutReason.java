// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Status;

/** A withdrawn procedure says why. */
final class WithdrawnWithoutReason extends ElementRule {

    WithdrawnWithoutReason() {
        super(new About("withdrawn-without-reason", Severity.ERROR,
                "A withdrawn procedure says why",
                "Somebody takes it out again, because nobody remembers."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().filter(procedure -> procedure.getStatus() == Status.WITHDRAWN
                && Works.isBlank(procedure.getWithdrawnReason()))
                .ifPresent(procedure -> findings.add(procedure, "The procedure is withdrawn without a reason: write why"));
    }
}
