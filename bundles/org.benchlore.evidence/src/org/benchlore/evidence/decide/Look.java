// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

/**
 * How well a test, or the eye, tells a part that would fail from one that would not.
 *
 * @param findsBad share of those that would fail which it finds, 0 to 1
 * @param blamesGood share of those that would hold which it blames, 0 to 1
 */
public record Look(double findsBad, double blamesGood) {

    /**
     * Checks the shares.
     *
     * @throws IllegalArgumentException if one of them is not from 0 to 1
     */
    public Look {
        if (!(findsBad >= 0 && findsBad <= 1 && blamesGood >= 0 && blamesGood <= 1)) {
            throw new IllegalArgumentException("Shares lie from 0 to 1, not " + findsBad + " and " + blamesGood);
        }
    }
}
