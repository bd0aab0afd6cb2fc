// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

/** Whose money a sum is. Sums of two payers are never added. */
public enum Payer {
    /** The customer's. */
    CUSTOMER,
    /** The shop's own: what it stands for itself if the unit comes back. */
    SHOP
}
