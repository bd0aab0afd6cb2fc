// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.math.BigDecimal;

import org.benchlore.model.Shop;

/**
 * How a shop counts. Every figure stands in the shop's file, where everybody can see and change it; what is missing
 * there is as {@link #usual()}: common practice, no source.
 *
 * @param followMonths how long a job must be followed before it counts as held
 * @param priorWorth how many jobs an author's own figure is worth, above 0
 * @param familyWeight what a job on another machine of the family is worth, 0 to 1
 * @param surePercent width of the band, in per cent
 * @param renewTroublePercent how often renewing itself brings trouble, until jobs say otherwise
 */
public record CountingRules(int followMonths, double priorWorth, double familyWeight, double surePercent,
        double renewTroublePercent) {

    private static final int MONTHS = 6;
    private static final double WORTH = 10;
    private static final double FAMILY = 0.5;
    private static final double SURE = 80;
    private static final double TROUBLE = 0.5;
    private static final double LEAST_WORTH = 0.01;
    private static final double MOST_SURE = 99.9;

    /**
     * Returns what holds where a shop says nothing.
     *
     * @return 6 months, 10 jobs, half, 80 %, 1 in 200
     */
    public static CountingRules usual() {
        return new CountingRules(MONTHS, WORTH, FAMILY, SURE, TROUBLE);
    }

    /**
     * Reads them from a shop. A figure that makes no sense is taken to the nearest that does.
     *
     * @param shop the shop
     * @return its rules
     */
    public static CountingRules of(Shop shop) {
        return new CountingRules(shop.getFollowMonths() == null ? MONTHS : shop.getFollowMonths(),
                Math.max(LEAST_WORTH, or(shop.getPriorWorth(), WORTH)), Math.min(1, or(shop.getFamilyWeight(), FAMILY)),
                Math.min(MOST_SURE, or(shop.getSurePercent(), SURE)),
                Math.min(100, or(shop.getRenewTroublePercent(), TROUBLE)));
    }

    /**
     * Writes them into a shop.
     *
     * @param shop the shop
     */
    public void into(Shop shop) {
        shop.setFollowMonths(followMonths);
        shop.setPriorWorth(plain(priorWorth));
        shop.setFamilyWeight(plain(familyWeight));
        shop.setSurePercent(plain(surePercent));
        shop.setRenewTroublePercent(plain(renewTroublePercent));
    }

    private static BigDecimal plain(double value) {
        var exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return exact.scale() < 0 ? exact.setScale(0) : exact;
    }

    private static double or(BigDecimal value, double otherwise) {
        return value == null ? otherwise : value.doubleValue();
    }
}
