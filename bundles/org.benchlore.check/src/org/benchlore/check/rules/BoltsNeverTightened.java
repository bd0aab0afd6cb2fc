// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Access;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Work;

/** Bolts that come out go in again with a torque. */
final class BoltsNeverTightened extends ElementRule {

    private final TradeWords words;

    private static final List<ProcedureKind> OPENING = List.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL);

    BoltsNeverTightened(TradeWords words) {
        super(new About("bolts-never-tightened", Severity.ERROR,
                "Bolts that come out go in again with a torque",
                "What was taken off is put back by feel, or not at all.",
                "Asks for any fastening in the refit, or in the same work of a procedure that renews or "
                        + "overhauls; it does not count bolts."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var access : subject.all(Access.class)) {
            if (access.getStrip() != null && access.getRefit() != null && !access.getRefit().getSteps().isEmpty()) {
                report(subject, access.getStrip(), access.getRefit(), findings);
            }
        }
        if (subject.procedure().filter(procedure -> OPENING.contains(procedure.getKind())).isPresent()) {
            subject.works().forEach(work -> report(subject, work, work, findings));
        }
    }

    private void report(Subject subject, Work out, Work in, Findings findings) {
        if (Works.fastenings(in).findAny().isEmpty()) {
            out.getSteps().stream().filter(step -> words.takesBoltsOut(subject.text(step))).findFirst()
                    .ifPresent(step -> findings.add(step,
                    "Bolts come out here, and nothing says how they are tightened again: add the fastening where they go in"));
        }
    }
}
