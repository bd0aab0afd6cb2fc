// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Status;

/** A withdrawn procedure names what replaces it. */
final class WithdrawnWithoutSuccessor extends ElementRule {

    WithdrawnWithoutSuccessor() {
        super(new About("withdrawn-without-successor", Severity.WARNING,
                "A withdrawn procedure names what replaces it",
                "Whoever finds it does not know what to do instead."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().filter(procedure -> procedure.getStatus() == Status.WITHDRAWN && procedure.getReplacedBy() == null)
                .ifPresent(procedure -> findings.add(procedure,
                        "The procedure is withdrawn and nothing replaces it: name the procedure to "
                        + "follow instead, or say that there is none"));
    }
}
