// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.benchlore.evidence.CountWords;

/** Says a decision in the words of the trade, one sentence a line. Amounts are in the shop's currency. */
public final class DecisionWords {

    private static final double CLEAR = 0.9;
    private static final double LIKELY = 0.7;
    private static final int DECIMALS = 2;

    private DecisionWords() {
    }

    /**
     * Says it.
     *
     * @param decision the decision
     * @param known how often it was seen, in words
     * @return the lines
     */
    public static List<String> lines(Decision decision, String known) {
        var asked = decision.asked();
        var lines = new ArrayList<String>();
        lines.add(asked.title() + ", because of " + asked.reasons().stream().map(Reason::words)
                .collect(Collectors.joining(", ")));
        lines.add("Left in, it brought the unit back: " + known);
        reckoned(asked, known).ifPresent(lines::add);
        if (asked.comeback().filter(comeback -> comeback.chance() <= asked.trouble().chance()).isPresent()) {
            lines.add("Renewing it brings trouble of its own at least as often: "
                    + CountWords.oneIn(asked.trouble().chance()));
        }
        payer(lines, asked, decision.customer(), "The customer");
        decision.shop().ifPresent(own -> payer(lines, asked, own, "The shop"));
        if (!asked.benefits().isEmpty()) {
            lines.add("What else it buys: " + asked.benefits().stream().sorted().map(Benefit::words)
                    .collect(Collectors.joining("; ")));
        }
        if (asked.reasons().contains(Reason.CAN_HURT)) {
            lines.add("Its failure can hurt somebody: its condition and the maker's limits decide, not the money");
        }
        return List.copyOf(lines);
    }

    /** Where notes and jobs are weighed, the figure that is reckoned with is not the plain share that was seen. */
    private static Optional<String> reckoned(Case asked, String known) {
        return asked.comeback().map(comeback -> CountWords.oneIn(comeback.chance()))
                .filter(words -> known.contains(" in ") && !known.contains(words))
                .map(words -> "Reckoned with " + words + ": what a note says counts like a few jobs, jobs on record count in full");
    }

    private static void payer(List<String> lines, Case asked, Verdict verdict, String who) {
        var sum = verdict.sum();
        lines.add(who + " pays: extra if done now " + amount(sum.extra()) + ", if it must come apart again "
                + amount(sum.apartLater()) + (sum.apartLater().compareTo(sum.again().total()) < 0
                        ? " (no more than the unit is worth)" : ""));
        lines.add(who + "'s money alone: " + judged(asked, verdict));
        if (verdict.costs().size() > 2) {
            lines.add(who + "'s ways out, for a job: " + verdict.costs().keySet().stream().sorted()
                    .map(option -> words(option) + " " + amount(verdict.costs().get(option)))
                    .collect(Collectors.joining("; ")) + ". Least: " + words(verdict.least()));
        }
    }

    private static String judged(Case asked, Verdict verdict) {
        if (verdict.breakEven().isEmpty()) {
            return "not worth it, however often it fails";
        }
        var from = "it pays if it would bring the unit back " + often(verdict.breakEven().getAsDouble());
        if (asked.comeback().isEmpty()) {
            return "nothing to go by; " + from;
        }
        return (verdict.pays() ? "worth it" : "not worth it") + sure(verdict.sure()) + "; " + from;
    }

    private static String often(double breakEven) {
        return CountWords.oneIn(breakEven) + " times or more";
    }

    private static String sure(double sureness) {
        if (sureness >= CLEAR) {
            return ", clearly";
        }
        return sureness >= LIKELY ? ", as far as it is known" : ", but it could as well be the other way";
    }

    private static String words(Option option) {
        return switch (option) {
            case LEAVE -> "leave it";
            case RENEW -> "renew it";
            case TEST -> "test it now and decide";
            case SHELF -> "have it on the shelf and decide on sight";
        };
    }

    private static String amount(BigDecimal amount) {
        return amount.setScale(DECIMALS, RoundingMode.HALF_UP).toPlainString();
    }
}
