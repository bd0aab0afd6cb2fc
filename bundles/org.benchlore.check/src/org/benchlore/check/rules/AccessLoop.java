// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Access;

/** No access needs itself to be open. */
final class AccessLoop extends ElementRule {

    AccessLoop() {
        super(new About("access-loop", Severity.ERROR,
                "No access needs itself to be open",
                "No plan can begin.",
                "Names the first access of a ring. Follows needs that only one access can meet."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var access : subject.all(Access.class)) {
            if (needsItself(access)) {
                findings.add(access, "'" + Works.shorten(access.getTitle())
                        + "' needs, by way of others, that it is open itself: take one need "
                        + "away");
                return;
            }
        }
    }

    private static boolean needsItself(Access start) {
        var seen = new HashSet<Access>();
        var open = new ArrayDeque<Access>(List.of(start));
        while (!open.isEmpty()) {
            for (var need : open.poll().getNeeds()) {
                var only = need.getAnyOf().size() == 1 ? need.getAnyOf().get(0) : null;
                if (only == start) {
                    return true;
                }
                if (only != null && seen.add(only)) {
                    open.add(only);
                }
            }
        }
        return false;
    }
}
