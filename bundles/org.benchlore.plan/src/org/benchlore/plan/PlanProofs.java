// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Procedure;
import org.benchlore.model.Verification;
import org.benchlore.model.VerificationKind;

/** What proves the job: every proof of what is done, the same one once; of trial runs the gentlest first, cold starts and codes
 * read again last. */
final class PlanProofs {

    private static final int TRIAL = 2;
    /** A run at the berth comes before the one on the water, a light load before a heavy one, a short one before a long one. */
    private static final Comparator<Verification> GENTLEST = Comparator.comparing(Verification::getLoad, smallest())
            .thenComparing(Verification::getDistance, smallest()).thenComparing(Verification::getDuration, smallest());

    private final ItemMaker maker;

    PlanProofs(ItemMaker maker) {
        this.maker = maker;
    }

    List<PlanItem> of(List<PlanItem> items) {
        var seen = new LinkedHashMap<String, PlanItem>();
        var ranks = new HashMap<String, Integer>();
        var procedures = new LinkedHashSet<Procedure>();
        items.stream().map(PlanItem::owner).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .forEach(procedures::add);
        for (var procedure : procedures) {
            boolean isAfterTrial = false;
            for (var proof : procedure.getVerifications()) {
                seen.putIfAbsent(key(proof), maker.proof(procedure, proof));
                ranks.merge(key(proof), rank(proof.getKind(), isAfterTrial), Math::max);
                isAfterTrial |= proof.getKind() == VerificationKind.TRIAL_RUN;
            }
        }
        return seen.entrySet().stream().sorted(Comparator.comparing((Map.Entry<String, PlanItem> entry) -> ranks.get(entry.getKey()))
                .thenComparing(entry -> entry.getValue().proof().orElseThrow(), GENTLEST)).map(Map.Entry::getValue).toList();
    }

    /** Reading the codes again is the same whoever asks; anything else is what its words and figures say. */
    private static String key(Verification proof) {
        return proof.getKind() == VerificationKind.CODES_READ_AGAIN ? proof.getKind().getLiteral()
                : proof.getKind() + "|" + proof.getText() + "|" + proof.getDistance() + "|" + proof.getDuration() + "|"
                        + proof.getStarts() + "|" + proof.getSoak() + "|" + proof.getLoad();
    }

    /** What has no place of its own stays behind the trial runs if its procedure puts one before it. */
    private static int rank(VerificationKind kind, boolean isAfterTrial) {
        return switch (kind) {
            case PRESSURE_HOLD -> 0;
            case OTHER, NOT_RECORDED -> isAfterTrial ? TRIAL + 1 : 1;
            case TRIAL_RUN -> TRIAL;
            case COLD_START -> TRIAL + 2;
            case CODES_READ_AGAIN -> TRIAL + 3;
        };
    }

    private static Comparator<Quantity> smallest() {
        return Comparator.nullsFirst(Comparator.comparing(Quantity::dimension).thenComparing(Quantity::compareMagnitude));
    }
}
