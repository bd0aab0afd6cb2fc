// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Access;

/** An access says how it is opened. */
final class AccessNeverOpened extends ElementRule {

    AccessNeverOpened() {
        super(new About("access-never-opened", Severity.ERROR,
                "An access says how it is opened",
                "The plan sends somebody where no step leads."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var access : subject.all(Access.class)) {
            if (access.getStrip() == null || access.getStrip().getSteps().isEmpty()) {
                findings.add(access, "'" + Works.shorten(access.getTitle())
                        + "' does not say how it is opened: write the strip with its steps");
            }
        }
    }
}
