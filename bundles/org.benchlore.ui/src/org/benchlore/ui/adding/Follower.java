// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.math.BigDecimal;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

import org.benchlore.model.Address;
import org.benchlore.plan.adding.Figure;
import org.benchlore.ui.plan.Wanted;

/** Is told what somebody does in the view. */
interface Follower {

    /** Something else is wanted. */
    void change(UnaryOperator<Wanted> change);

    /** It is kept so many years; empty for what the unit's page says. */
    void keep(OptionalInt years);

    /** A figure of one's own. */
    void figure(String proposal, Figure figure, BigDecimal value);

    /** The shop's own figure again. */
    void reset(String proposal, Figure figure);

    /** All of a proposal's figures again as they were. */
    void resetAll(String proposal);

    /** Makes the customer's sheet. */
    void sheet();

    /** Opens the plan with what is ticked. */
    void intoPlan();

    /** Stops what is being reckoned. */
    void stop();

    /** Begins anew. */
    void startOver();

    /** Opens a page. */
    void open(Address address);
}
