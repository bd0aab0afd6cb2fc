// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.chance;

import java.util.Objects;

/**
 * A fault that may be there.
 *
 * @param id what it is called
 * @param prior how likely it is before anything was found, above 0 and below 1
 */
public record Suspect(String id, double prior) {

    /** Refuses what is not a chance: a fault that is certain or impossible could never be argued with. */
    public Suspect {
        Objects.requireNonNull(id);
        if (!(prior > 0 && prior < 1)) {
            throw new IllegalArgumentException(id + " needs a chance between 0 and 1, not " + prior);
        }
    }

    /**
     * Returns the same fault with its odds multiplied, as a circumstance of the case does.
     *
     * @param factor above 0
     * @return the fault, its chance still between 0 and 1
     */
    public Suspect times(double factor) {
        var odds = prior / (1 - prior) * factor;
        return new Suspect(id, odds / (1 + odds));
    }
}
