// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Access;

/** No access needs what must not be open with it. */
final class AccessAgainstItsNeed extends ElementRule {

    AccessAgainstItsNeed() {
        super(new About("access-against-need", Severity.ERROR,
                "No access needs what must not be open with it",
                "The two are dangerous together, and the plan must do both."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var access : subject.all(Access.class)) {
            var against = access.getNeeds().stream().filter(need -> !need.getAnyOf().isEmpty()
                    && need.getAnyOf().stream().allMatch(one -> access.getNotWith().contains(one)
                            || one.getNotWith().contains(access)))
                    .findFirst();
            against.ifPresent(need -> findings.add(access, "'" + Works.shorten(access.getTitle()) + "' needs '"
                    + Works.shorten(need.getAnyOf().get(0).getTitle()) + "' and must not be open with it: take one of the two away"));
        }
    }
}
