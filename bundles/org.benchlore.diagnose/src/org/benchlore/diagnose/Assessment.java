// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.ladder.Ladder;

/**
 * The answer to a question.
 *
 * @param about the machine or the unit
 * @param findings symptoms and codes as they were understood
 * @param unknown those of which the library knows nothing
 * @param nearest what comes near in words to those
 * @param causes ranked, the likeliest first
 * @param others how many less likely ones were left off
 * @param elsewhere how likely something is there that stands in no book; never 0
 * @param together causes that it takes together to account for all findings; empty if one does
 * @param ruledOut what looked like this and was not
 * @param chain the function that fails, as far as it can be told
 * @param checks what to check next
 * @param ladder what to look at after work that did not cure
 * @param path the way so far
 * @param remarks what a person should know about this answer
 */
public record Assessment(Named about, List<Finding> findings, List<Finding> unknown, List<Near> nearest,
        List<RankedCause> causes, int others, double elsewhere, List<Named> together, List<RuledOut> ruledOut, Optional<FunctionChain> chain,
        Checks checks, Optional<Ladder> ladder, Path path, List<String> remarks) {

    /** Stands under every answer. */
    public static final String CAUTION = "Check against the manufacturer's data for this machine; "
            + "local rules and a licensed person decide.";

    /**
     * Tells whether anything is known for these findings.
     *
     * @return false if only the function chain can be given
     */
    public boolean isKnown() {
        return !causes.isEmpty();
    }
}
