// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

/**
 * Where the part is.
 *
 * @param here whether it lies on the shelf
 * @param ahead whether it can still be ordered before the strip, so that nobody waits for it
 * @param days days it takes to come
 */
public record Delivery(boolean here, boolean ahead, int days) {

    /** On the shelf. */
    public static final Delivery HERE = new Delivery(true, true, 0);

    /** Days of waiting if it is wanted from the start. */
    int waitingIfPlanned() {
        return here || ahead ? 0 : days;
    }

    /** Days of waiting if it turns out to be wanted when the machine is open. */
    int waitingIfFound() {
        return here ? 0 : days;
    }
}
