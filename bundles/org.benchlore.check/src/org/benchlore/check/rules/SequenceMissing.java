// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.SequencePattern;

/** Four or more bolts say in which order they are tightened. */
final class SequenceMissing extends ElementRule {

    private static final int FEWEST = 4;

    SequenceMissing() {
        super(new About("sequence-missing", Severity.WARNING,
                "Four or more bolts say in which order they are tightened",
                "Tightened round about, a cover warps and leaks."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (Works.count(fastening.getCount()) >= FEWEST && fastening.getPattern() == SequencePattern.NOT_RECORDED) {
                findings.add(fastening, Works.name(fastening) + " has " + fastening.getCount()
                        + " bolts and no order: say how they lie, or that any order will do");
            }
        }
    }
}
