// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.torque.Place;
import org.benchlore.torque.Verdict;

/** A torque does not overload its bolt and is not off by a unit. */
final class TorqueImplausible extends ElementRule {

    private final Judgement.Known known;

    TorqueImplausible(Judgement.Known known) {
        super(new About("torque-implausible", Severity.ERROR,
                "A torque does not overload its bolt and is not off by a unit",
                "A bolt tightened beyond its proof load stretches or breaks, now or on the road.",
                "Judges thread and class only, with the usual friction: not the female thread, gaskets or "
                        + "washers. A bolt without a class is not judged."));
        this.known = known;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            known.of(fastening).verdict().filter(TorqueImplausible::isWrong)
                    .ifPresent(verdict -> findings.add(fastening, sentence(fastening, verdict)));
        }
    }

    private static boolean isWrong(Verdict verdict) {
        return verdict.isSlip() || verdict.place() == Place.ABOVE_PROOF;
    }

    private static String sentence(Fastening fastening, Verdict verdict) {
        var guess = verdict.slips().isEmpty() ? "" : " (" + verdict.slips().get(0).words() + ")";
        return verdict.judged() + " at " + Works.name(fastening) + " is " + verdict.words() + " for " + Judgement.bolt(fastening)
                + guess + ": look it up in the maker's data";
    }
}
