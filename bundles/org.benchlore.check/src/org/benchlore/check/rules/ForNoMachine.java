// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;

/** A procedure says for which machine it is. */
final class ForNoMachine extends ElementRule {

    ForNoMachine() {
        super(new About("for-no-machine", Severity.WARNING,
                "A procedure says for which machine it is",
                "It is followed on a machine it does not fit."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().filter(procedure -> procedure.getApplicability().stream().allMatch(one -> one.getMachine() == null))
                .ifPresent(procedure -> findings.add(procedure, "No machine is named: say for which machines the procedure is"));
    }
}
