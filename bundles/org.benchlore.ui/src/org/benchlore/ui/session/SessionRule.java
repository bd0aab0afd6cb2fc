// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import org.eclipse.core.runtime.jobs.ISchedulingRule;

/** Lets jobs on the window's library run one after another. */
final class SessionRule implements ISchedulingRule {

    @Override
    public boolean contains(ISchedulingRule rule) {
        return rule == this;
    }

    @Override
    public boolean isConflicting(ISchedulingRule rule) {
        return rule == this;
    }
}
