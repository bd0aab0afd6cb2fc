// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import org.benchlore.measure.Quantity;

/**
 * Time by the clock, in minutes.
 *
 * @param usual when nothing is seized
 * @param bad when it goes badly; the usual time where that was not written down
 */
public record Minutes(long usual, long bad) {

    /** No time at all. */
    public static final Minutes NONE = new Minutes(0, 0);

    static Minutes of(Quantity usual, Quantity bad) {
        long known = usual != null ? usual.minutes() : bad == null ? 0 : bad.minutes();
        return new Minutes(known, bad == null ? known : Math.max(known, bad.minutes()));
    }

    /** The sum. */
    public Minutes plus(Minutes other) {
        return new Minutes(usual + other.usual, bad + other.bad);
    }

    /** So many times. */
    public Minutes times(long factor) {
        return new Minutes(usual * factor, bad * factor);
    }
}
