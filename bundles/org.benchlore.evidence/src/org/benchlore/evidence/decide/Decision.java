// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.util.Optional;

/**
 * The answer to a case: the customer's verdict and the shop's, side by side and never added.
 *
 * @param asked the case
 * @param customer what the customer's money says
 * @param shop what the shop's own money says, if it stands for anything
 */
public record Decision(Case asked, Verdict customer, Optional<Verdict> shop) {
}
