// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.Locale;

/**
 * One figure that is to be reached, and what was reached.
 *
 * @param id its number
 * @param what what is compared
 * @param reached the figure, NaN where nothing was measured
 * @param most the greatest figure that will do
 * @param judged whether the figure counts; false where the run was not made for it
 * @param remark what one must know to read it; may be empty
 */
record Target(String id, String what, double reached, double most, boolean judged, String remark) {

    static Target of(String id, String what, double reached, double most, String remark) {
        return new Target(id, what, reached, most, !Double.isNaN(reached), remark);
    }

    String verdict() {
        return !judged ? "not judged" : reached <= most ? "met" : "NOT MET";
    }

    String figure() {
        return Double.isNaN(reached) ? "-" : String.format(Locale.ROOT, reached < 10 ? "%.2f" : "%.1f", reached);
    }
}
