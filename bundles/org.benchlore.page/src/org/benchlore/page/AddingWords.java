// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.evidence.CountWords;
import org.benchlore.evidence.decide.Option;
import org.benchlore.plan.adding.Figure;
import org.benchlore.plan.adding.Proposal;

/** Words about proposals that stand on the shop's page, on the customer's sheet and in the window. */
public final class AddingWords {

    private static final int HUNDRED = 100;

    private AddingWords() {
    }

    /** A way out, with a capital. */
    public static String way(Option option) {
        return switch (option) {
            case LEAVE -> "Leave it";
            case RENEW -> "Renew it now";
            case TEST -> "Test it now and decide";
            case SHELF -> "Have it on the shelf and decide on sight";
        };
    }

    /** Why a way out has no sum. */
    static String noSum(Proposal one, Option option) {
        if (option == Option.TEST) {
            return one.test().isEmpty() ? "no sum: no test is written down"
                    : one.assumptions().find(Figure.TEST).isEmpty() ? "no sum: its test cannot be planned now"
                    : one.assumptions().find(Figure.TEST_FINDS).isEmpty() ? "no sum: testing costs "
                            + AddingPage.amount(one.assumptions().value(Figure.TEST)) + ", how well it tells is not known"
                            : nothingKnown();
        }
        if (option == Option.SHELF && one.assumptions().find(Figure.EYE_FINDS).isEmpty()) {
            return "no sum: how well the eye tells is not known";
        }
        return nothingKnown();
    }

    private static String nothingKnown() {
        return "no sum: nothing is recorded";
    }

    /** From how often on renewing pays. */
    public static String paysFrom(Proposal one) {
        var from = one.decision().customer().breakEven();
        return from.isPresent() ? often(one, from.getAsDouble()) : "never, on money alone";
    }

    /** Where rounded words say the same of both, the figure tells them apart. */
    private static String often(Proposal one, double from) {
        var words = CountWords.oneIn(from);
        return one.known().words().contains(words) ? words + ", " + Math.round(from * HUNDRED) + " in a hundred" : words;
    }
}
