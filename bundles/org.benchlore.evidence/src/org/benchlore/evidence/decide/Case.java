// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.evidence.Estimate;

/**
 * Everything a decision needs.
 *
 * @param title what would be done
 * @param customer the customer's sum
 * @param shop the shop's own sum, if it stands for anything
 * @param comeback chance that the old part, left in, brings the unit back; empty if nothing is known
 * @param trouble chance that renewing itself brings trouble
 * @param test how well a test tells, if there is one
 * @param sight how well the eye tells, if it does
 * @param delivery where the part is
 * @param reasons why it is thought of
 * @param benefits what it buys beside the money
 */
public record Case(String title, Sum customer, Optional<Sum> shop, Optional<Estimate> comeback, Estimate trouble,
        Optional<Look> test, Optional<Look> sight, Delivery delivery, List<Reason> reasons, Set<Benefit> benefits) {

    /**
     * Checks whose sums they are.
     *
     * @throws IllegalArgumentException if a sum stands in the place of the other payer's
     */
    public Case {
        if (customer.payer() != Payer.CUSTOMER || shop.filter(sum -> sum.payer() != Payer.SHOP).isPresent()) {
            throw new IllegalArgumentException("The customer's sum and the shop's are mixed up in: " + title);
        }
    }

    /**
     * Makes a case with two ways out, leave and renew, and the part on the shelf.
     *
     * @param title what would be done
     * @param customer the customer's sum
     * @param comeback chance that the old part brings the unit back
     * @param trouble chance that renewing brings trouble
     * @return the case, because of a note
     */
    public static Case of(String title, Sum customer, Estimate comeback, Estimate trouble) {
        return new Case(title, customer, Optional.empty(), Optional.of(comeback), trouble, Optional.empty(),
                Optional.empty(), Delivery.HERE, List.of(Reason.NOTE), Set.of());
    }

    /**
     * Adds the shop's own sum.
     *
     * @param own the shop's sum
     * @return the case with it
     */
    public Case withShop(Sum own) {
        return new Case(title, customer, Optional.of(own), comeback, trouble, test, sight, delivery, reasons, benefits);
    }

    /**
     * Adds ways to look first.
     *
     * @param testing how well a test tells, if there is one
     * @param seeing how well the eye tells, if it does
     * @param part where the part is
     * @return the case with them
     */
    public Case withLooks(Optional<Look> testing, Optional<Look> seeing, Delivery part) {
        return new Case(title, customer, shop, comeback, trouble, testing, seeing, part, reasons, benefits);
    }

    /**
     * Says why it is thought of and what else it buys.
     *
     * @param why the reasons
     * @param buys the benefits
     * @return the case with them
     */
    public Case because(List<Reason> why, Set<Benefit> buys) {
        return new Case(title, customer, shop, comeback, trouble, test, sight, delivery, why, buys);
    }

    /**
     * Makes the case of one of which nothing is known.
     *
     * @return the case without a figure
     */
    public Case unknown() {
        return new Case(title, customer, shop, Optional.empty(), trouble, test, sight, delivery, reasons, benefits);
    }
}
