// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.List;
import java.util.Optional;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.model.Procedure;
import org.benchlore.model.Verification;
import org.benchlore.model.VerificationKind;
import org.benchlore.model.Work;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.search.PlanException;

/** Makes the items of a plan from accesses, ways and proofs. */
final class ItemMaker {

    /** Speed at which a trial run's distance is taken where its time is not written down; an assumption, said in the plan. */
    static final int KM_AN_HOUR = 40;
    /** Somebody's time for one cold start; an assumption, said in the plan. */
    static final int MINUTES_A_START = 10;

    private final PlanInputs inputs;
    private final PlanBook book;

    ItemMaker(PlanInputs inputs) {
        this.inputs = inputs;
        this.book = inputs.book();
    }

    PlanItem strip(String id) {
        var access = book.accesses().get(id);
        return access(Part.STRIP, id, access.getStrip(), access.getStrip() == null ? "Open: " + Titles.of(access)
                : Titles.of(access.getStrip()));
    }

    PlanItem refit(String id) {
        var access = book.accesses().get(id);
        return access(Part.REFIT, id, access.getRefit(), access.getRefit() == null ? "Close: " + Titles.of(access)
                : Titles.of(access.getRefit()));
    }

    private PlanItem access(Part part, String id, Work work, String title) {
        return new PlanItem(part, id, title, book.machine(), Optional.ofNullable(work), Optional.empty(), List.of(),
                WorkFacts.minutes(work, null), WorkFacts.people(work), WorkFacts.skill(work, null), false);
    }

    PlanItem work(Part part, String target, String option) throws PlanException {
        var procedure = book.procedure(target);
        return of(part, procedure, inputs.way(target, option).map(way -> way.getWork()).orElse(null));
    }

    PlanItem closing(String id) throws PlanException {
        var procedure = book.procedure(id);
        return of(Part.CLOSING, procedure, inputs.closingWork(procedure).orElse(null));
    }

    private static PlanItem of(Part part, Procedure procedure, Work work) {
        return new PlanItem(part, procedure.getId(), Titles.of(procedure), procedure, Optional.ofNullable(work),
                Optional.empty(), List.of(), WorkFacts.minutes(work, procedure), WorkFacts.people(work),
                WorkFacts.skill(work, procedure), false);
    }

    PlanItem proof(Procedure procedure, Verification proof) {
        return new PlanItem(Part.PROOF, proof.getId(), Titles.of(procedure), procedure, Optional.empty(), Optional.of(proof),
                List.of(), new Minutes(minutes(proof), minutes(proof)), 1, WorkFacts.skill(null, procedure), false);
    }

    private static long minutes(Verification proof) {
        if (proof.getDuration() != null) {
            return proof.getDuration().minutes();
        }
        if (proof.getDistance() != null) {
            return Math.round(proof.getDistance().in(MeasureUnits.METRE).doubleValue() / 1000 * 60 / KM_AN_HOUR);
        }
        int starts = proof.getStarts() == null ? 1 : proof.getStarts();
        return proof.getKind() == VerificationKind.COLD_START ? (long) MINUTES_A_START * starts : 0;
    }
}
