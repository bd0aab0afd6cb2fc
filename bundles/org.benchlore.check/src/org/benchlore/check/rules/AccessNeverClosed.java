// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Access;

/** What is opened is closed: every access has its way back. */
final class AccessNeverClosed extends ElementRule {

    AccessNeverClosed() {
        super(new About("access-never-closed", Severity.ERROR,
                "What is opened is closed: every access has its way back",
                "The plan ends with the machine open, or the refit is done from memory."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var access : subject.all(Access.class)) {
            if (access.getStrip() != null && (access.getRefit() == null || access.getRefit().getSteps().isEmpty())) {
                findings.add(access, "'" + Works.shorten(access.getTitle())
                        + "' is opened and never closed: write the refit with its steps");
            }
        }
    }
}
