// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;

import org.benchlore.model.Procedure;
import org.benchlore.model.Verification;
import org.benchlore.model.VerificationKind;

/** What proves the job: every proof of what is done, the same one once; cold starts and codes read again last. */
final class PlanProofs {

    private final ItemMaker maker;

    PlanProofs(ItemMaker maker) {
        this.maker = maker;
    }

    List<PlanItem> of(List<PlanItem> items) {
        var seen = new LinkedHashMap<String, PlanItem>();
        var procedures = new LinkedHashSet<Procedure>();
        items.stream().map(PlanItem::owner).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .forEach(procedures::add);
        for (var procedure : procedures) {
            for (var proof : procedure.getVerifications()) {
                seen.putIfAbsent(key(proof), maker.proof(procedure, proof));
            }
        }
        var proofs = new ArrayList<>(seen.values());
        proofs.sort(Comparator.comparingInt(item -> rank(item.proof().orElseThrow().getKind())));
        return proofs;
    }

    /** Reading the codes again is the same whoever asks; anything else is what its words and figures say. */
    private static String key(Verification proof) {
        return proof.getKind() == VerificationKind.CODES_READ_AGAIN ? proof.getKind().getLiteral()
                : proof.getKind() + "|" + proof.getText() + "|" + proof.getDistance() + "|" + proof.getDuration() + "|"
                        + proof.getStarts() + "|" + proof.getSoak() + "|" + proof.getLoad();
    }

    private static int rank(VerificationKind kind) {
        return switch (kind) {
            case PRESSURE_HOLD -> 0;
            case OTHER, NOT_RECORDED -> 1;
            case TRIAL_RUN -> 2;
            case COLD_START -> 3;
            case CODES_READ_AGAIN -> 4;
        };
    }
}
