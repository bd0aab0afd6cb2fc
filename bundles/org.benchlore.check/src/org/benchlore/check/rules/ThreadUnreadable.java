// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;

/** Thread and class can be read, so that the torque is judged. */
final class ThreadUnreadable extends ElementRule {

    private final Judgement.Known known;

    ThreadUnreadable(Judgement.Known known) {
        super(new About("thread-unreadable", Severity.WARNING,
                "Thread and class can be read, so that the torque is judged",
                "A thread that is written wrong hides a wrong torque."));
        this.known = known;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            known.of(fastening).refusal().ifPresent(reason -> findings.add(fastening, "The torque of " + Works.name(fastening)
                    + " was not judged: " + Works.plain(reason).replaceAll("[.]$", "")));
        }
    }
}
