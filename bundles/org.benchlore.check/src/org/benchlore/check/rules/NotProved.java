// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Work;

/** Work that renews or overhauls says how it is proved. */
final class NotProved extends ElementRule {

    private static final List<ProcedureKind> OPENING = List.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL);

    NotProved() {
        super(new About("not-proved", Severity.WARNING,
                "Work that renews or overhauls says how it is proved",
                "The machine goes back to the customer untried."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().filter(procedure -> OPENING.contains(procedure.getKind()) && procedure.getVerifications().isEmpty())
                .ifPresent(procedure -> findings.add(procedure,
                        "Nothing says how the work is proved: add a trial run, cold starts or codes "
                        + "read again"));
    }
}
