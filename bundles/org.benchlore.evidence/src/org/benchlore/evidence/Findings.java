// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

/**
 * The answer to a question.
 *
 * @param left what became of those left in
 * @param prior what was said of them before
 * @param comeback how often one that is left in brings the unit back
 * @param renewed what became of those renewed
 * @param trouble how often renewing itself brings trouble
 */
public record Findings(Counts left, Prior prior, Estimate comeback, Counts renewed, Estimate trouble) {

    /**
     * Tells whether anything at all is known of those left in: without it there is no figure to decide by.
     *
     * @return true if a note, life data or a counted job speaks of them
     */
    public boolean isKnown() {
        return left.of() > 0 || !(prior instanceof Prior.Nothing);
    }

    /**
     * Returns how often it was seen to fail, in notes and jobs together, each once.
     *
     * @return a count
     */
    public int failed() {
        return left.failed() + (prior instanceof Prior.Tally tally ? tally.count() : 0);
    }

    /**
     * Returns of how many jobs that is.
     *
     * @return a count
     */
    public int of() {
        return left.of() + (prior instanceof Prior.Tally tally ? tally.ofAbout() : 0);
    }
}
