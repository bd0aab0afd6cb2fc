// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.EnumMap;
import java.util.Map;

import org.benchlore.evidence.CountingRules;
import org.benchlore.model.Frequency;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Shop;
import org.benchlore.model.WeightKind;

/**
 * What things count for: the shop's own figures where it gives usable ones, else the figures below. Common practice, no
 * source: they only have to stand in the right order, and the shop can put its own in their place.
 */
public final class Weights {

    private static final Map<WeightKind, Double> USUAL = Map.ofEntries(
            Map.entry(WeightKind.MET_OFTEN, 0.10), Map.entry(WeightKind.MET_SOMETIMES, 0.03),
            Map.entry(WeightKind.MET_RARELY, 0.01), Map.entry(WeightKind.MET_NOT_SAID, 0.02),
            Map.entry(WeightKind.SOMETHING_ELSE, 0.03), Map.entry(WeightKind.BOOK_LINKS, 0.4),
            Map.entry(WeightKind.SUSPECTED_LINKS, 0.3), Map.entry(WeightKind.SEEN_LINKS, 0.7),
            Map.entry(WeightKind.HELD_LINKS, 0.8), Map.entry(WeightKind.MAKER_LINKS, 0.4),
            Map.entry(WeightKind.CODE_LINKS, 0.05), Map.entry(WeightKind.ELSE_LINKS, 0.2),
            Map.entry(WeightKind.STRAY, 0.01), Map.entry(WeightKind.CHECK_SHOWS, 0.9),
            Map.entry(WeightKind.CHECK_STRAY, 0.05), Map.entry(WeightKind.SUSPECTED_COUNTS, 0.5),
            Map.entry(WeightKind.OTHER_WORK_COUNTS, 0.5), Map.entry(WeightKind.NEW_PART, 0.25),
            Map.entry(WeightKind.OLD_PART_KEPT, 3.0), Map.entry(WeightKind.DISTURBED, 1.5),
            Map.entry(WeightKind.CHECK_MINUTES, 10.0));
    private static final double PRIOR_WORTH = 10;
    private static final double SURE_PERCENT = 80;
    private static final double LARGEST = 1000;

    private final Map<WeightKind, Double> own = new EnumMap<>(WeightKind.class);
    private final double priorWorth;
    private final double surePercent;
    private final double family;

    /**
     * Reads a shop's weights.
     *
     * @param shop the shop, or null
     */
    public Weights(Shop shop) {
        priorWorth = shop == null || shop.getPriorWorth() == null || shop.getPriorWorth().signum() == 0 ? PRIOR_WORTH
                : Math.min(shop.getPriorWorth().doubleValue(), LARGEST);
        surePercent = shop == null || shop.getSurePercent() == null ? SURE_PERCENT
                : Math.max(1, Math.min(shop.getSurePercent().doubleValue(), 99));
        family = (shop == null ? CountingRules.usual() : CountingRules.of(shop)).familyWeight();
        if (shop != null) {
            shop.getWeights().forEach(weight -> {
                if (weight.getValue() != null && isUsable(weight.getKind(), weight.getValue().doubleValue())) {
                    own.put(weight.getKind(), weight.getValue().doubleValue());
                }
            });
        }
    }

    private static boolean isUsable(WeightKind kind, double value) {
        return switch (kind) {
            case NOT_RECORDED -> false;
            case NEW_PART, OLD_PART_KEPT, DISTURBED, CHECK_MINUTES -> value > 0 && value <= LARGEST;
            default -> value > 0 && value < 1;
        };
    }

    /**
     * Returns a weight.
     *
     * @param kind any but NOT_RECORDED
     * @return the shop's own, else the usual one
     */
    public double of(WeightKind kind) {
        return own.getOrDefault(kind, USUAL.get(kind));
    }

    /**
     * Returns how many cases the author's own figure is worth.
     *
     * @return above 0
     */
    public double priorWorth() {
        return priorWorth;
    }

    /**
     * Returns the width of the band.
     *
     * @return per cent
     */
    public double surePercent() {
        return surePercent;
    }

    /**
     * Returns what a case on another machine of the family counts for, the same as in the shop's evidence.
     *
     * @return 0 to 1
     */
    public double family() {
        return family;
    }

    double of(Frequency frequency) {
        return of(switch (frequency) {
            case OFTEN -> WeightKind.MET_OFTEN;
            case SOMETIMES -> WeightKind.MET_SOMETIMES;
            case RARELY -> WeightKind.MET_RARELY;
            case NOT_RECORDED -> WeightKind.MET_NOT_SAID;
        });
    }

    /** What a finding on a note counts for, by how far the note is proved. */
    double links(NoteStatus status) {
        return switch (status) {
            case HELD -> of(WeightKind.HELD_LINKS);
            case SEEN -> of(WeightKind.SEEN_LINKS);
            case SUSPECTED, UNSORTED -> of(WeightKind.SUSPECTED_LINKS);
            case RULED_OUT, SUPERSEDED -> 0;
        };
    }

    /** What a case on a note counts for. */
    double counts(NoteStatus status) {
        return switch (status) {
            case HELD, SEEN -> 1;
            case SUSPECTED, UNSORTED -> of(WeightKind.SUSPECTED_COUNTS);
            case RULED_OUT, SUPERSEDED -> 0;
        };
    }
}
