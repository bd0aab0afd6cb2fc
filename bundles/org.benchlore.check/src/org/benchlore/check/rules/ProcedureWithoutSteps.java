// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Status;

/** A procedure has a way with steps. */
final class ProcedureWithoutSteps extends ElementRule {

    ProcedureWithoutSteps() {
        super(new About("procedure-without-steps", Severity.ERROR,
                "A procedure has a way with steps",
                "There is nothing to follow."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().filter(procedure -> procedure.getStatus() != Status.WITHDRAWN).ifPresent(procedure -> {
            if (procedure.getWays().isEmpty()) {
                findings.add(procedure, "The procedure has no way: write what is to be done, with steps");
            }
            procedure.getWays().stream().filter(way -> way.getWork() == null || way.getWork().getSteps().isEmpty())
                    .forEach(way -> findings.add(way, "This way has no step: write the steps, or remove the way"));
        });
    }
}
