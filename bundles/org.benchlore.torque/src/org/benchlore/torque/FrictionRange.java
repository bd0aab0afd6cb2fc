// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Objects;

/**
 * The friction to reckon with: one value where it is known, else the least, the middle and the most to be expected.
 *
 * @param least the least
 * @param middle what is calculated with
 * @param most the most
 * @param words where it comes from
 */
public record FrictionRange(Friction least, Friction middle, Friction most, String words) {

    public FrictionRange {
        Objects.requireNonNull(words);
        if (least.thread() > middle.thread() || middle.thread() > most.thread()) {
            throw new IllegalArgumentException("Friction must rise from the least to the most: write for example 0.08, "
                    + "0.12, 0.16.");
        }
    }

    /** Friction that was given. */
    public static FrictionRange given(Friction friction) {
        return new FrictionRange(friction, friction, friction, friction + ", as given");
    }

    /**
     * What is to be expected where nothing is said: VDI 2230 friction class B (oils, greases, as delivered) for steel;
     * for stainless from paste (upper end of class A) to oil (class D). Ranges: amesweb.info.
     */
    public static FrictionRange usual(PropertyClass propertyClass) {
        return propertyClass.family() == PropertyClass.Family.STAINLESS
                ? between(0.10, 0.35, "from paste to oil on stainless steel, VDI 2230 classes A to D")
                : between(0.08, 0.16, "as delivered, oiled or greased, VDI 2230 class B");
    }

    private static FrictionRange between(double least, double most, String words) {
        var middle = Friction.both((least + most) / 2);
        return new FrictionRange(Friction.both(least), middle, Friction.both(most), middle + " assumed, since none was "
                + "given; to be expected " + Figures.plain(least) + " to " + Figures.plain(most) + " (" + words + ")");
    }

    /**
     * Where the least comes from, for a calculation that reckons with it: the least friction gives the most preload for
     * a torque, so that a share of yield is not exceeded unnoticed (VDI 2230-1 reckons so; from memory).
     */
    public String leastWords() {
        return isGiven() ? words : least + " reckoned with, since none was given: the least to be expected, which gives the "
                + "most preload" + words.substring(words.indexOf(';'));
    }

    /** Whether it was given and is therefore one value. */
    public boolean isGiven() {
        return least.equals(most);
    }
}
