// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;
import java.util.Locale;

import org.benchlore.diagnose.chance.Share;

/** An answer in a workshop's words: counts under three cases, never a rate; no word of statistics. */
public final class Words {

    private static final double MOST_LIKELY = 0.5;
    private static final double LIKELY = 0.2;
    private static final double POSSIBLE = 0.05;

    private static final double CERTAIN = 0.95;
    private static final String CERTAINLY = "nearly certain";

    private Words() {
    }

    /**
     * Says how likely something is.
     *
     * @param chance 0 to 1
     * @return one of four words
     */
    public static String standing(double chance) {
        return chance >= MOST_LIKELY ? "most likely" : chance >= LIKELY ? "likely" : chance >= POSSIBLE ? "possible"
                : "less likely";
    }

    /**
     * Says how many of how many.
     *
     * @param chance 0 to 1
     * @return such as 'about 3 in 10'
     */
    public static String share(double chance) {
        if (chance >= CERTAIN) {
            return CERTAINLY;
        }
        if (chance >= 0.15) {
            return "about " + Math.round(chance * 10) + " in 10";
        }
        return chance >= 0.01 ? "about 1 in " + Math.round(1 / chance) : "under 1 in 100";
    }

    /**
     * Says how likely a cause is now: as a rate only where at least three cases stand behind it.
     *
     * @param cause a cause
     * @return words
     */
    public static String chance(RankedCause cause) {
        return cause.counted().events() < Share.ENOUGH ? standing(cause.chance())
                : cause.chance() >= CERTAIN ? CERTAINLY : standing(cause.chance()) + ", " + share(cause.chance());
    }

    /**
     * Says how often a cause was met.
     *
     * @param counted its count
     * @return words
     */
    public static String counted(Counted counted) {
        var book = relatives(counted.relatives()) + (counted.frequency().isEmpty() ? "the book does not say how often"
                : "the book says " + counted.frequency());
        if (counted.events() == 0) {
            return "not met by us so far; " + book;
        }
        if (counted.events() < Share.ENOUGH) {
            return "met by us " + (counted.events() == 1 ? "once" : "twice") + " so far; " + book;
        }
        return "seen in " + counted.events() + " of about " + counted.of() + " of ours; " + book;
    }

    private static String relatives(int cases) {
        return cases == 0 ? "" : (cases == 1 ? "once" : cases == 2 ? "twice" : cases + " times")
                + " on other machines of the family; ";
    }

    /**
     * Says how sure a standing is at these counts.
     *
     * @param cause a cause
     * @return words
     */
    public static String sure(RankedCause cause) {
        var low = standing(cause.low());
        var high = standing(cause.high());
        return low.equals(high) ? "the counts would have to change a lot to change this"
                : "on these counts it may be anything from " + low + " to " + high;
    }

    /**
     * Says what moved a cause.
     *
     * @param cause the cause
     * @param move one of its moves
     * @return such as 'moved up from about 1 in 20 to about 4 in 10: 4C17'
     */
    public static String move(RankedCause cause, Move move) {
        var from = shown(cause, move.from());
        var to = shown(cause, move.to());
        return "moved " + (move.isUp() ? "up" : "down") + (from.equals(to) ? " a little" : " from " + from + " to " + to)
                + ": " + move.by();
    }

    private static String shown(RankedCause cause, double chance) {
        return cause.counted().events() >= Share.ENOUGH ? share(chance) : standing(chance);
    }

    /**
     * Says what a witness adds.
     *
     * @param witness a witness
     * @return one line without its title
     */
    public static String witness(Witness witness) {
        return switch (witness.kind()) {
            case NOTE -> "note, " + witness.says();
            case JOB -> "job, " + witness.says();
            case DOCUMENT, BOOK, CODE -> witness.says();
        };
    }

    /**
     * Says what the order of the checks saves.
     *
     * @param checks the checks
     * @return one sentence
     */
    public static String time(Checks checks) {
        return "In this order it takes about " + minutes(checks.expected())
                + " as a rule; always the likeliest first about " + minutes(checks.likeliestFirst())
                + ", always the quickest first about " + minutes(checks.shortestFirst()) + ".";
    }

    /**
     * Says a time.
     *
     * @param minutes minutes
     * @return such as '35 min' or '2.5 h'
     */
    public static String minutes(double minutes) {
        return minutes < 120 ? Math.round(minutes) + " min" : String.format(Locale.ROOT, "%.1f h", minutes / 60);
    }

    /**
     * Says how likely it is that the cause stands in no book.
     *
     * @param assessment an answer
     * @return one sentence
     */
    public static String elsewhere(Assessment assessment) {
        return "Something that stands in no book: " + standing(assessment.elsewhere()) + ".";
    }

    /**
     * Says that several faults are there together.
     *
     * @param causes two or more
     * @return one sentence
     */
    public static String together(List<Named> causes) {
        return "No single cause accounts for all of it; together these do: "
                + String.join("; ", causes.stream().map(Named::title).toList()) + ".";
    }
}
