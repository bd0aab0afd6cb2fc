// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.Optional;

import org.benchlore.model.Address;

/**
 * What a rule found.
 *
 * @param rule id of the rule
 * @param severity how grave it is
 * @param at the element, or the nearest one around it that has an id
 * @param place where that is in its file, in words such as {@code step 3, fastening drain plug}; empty for the whole file
 * @param sentence what is wrong and what to do, one line in plain words
 * @param fix how it is mended without thinking, if it can be
 */
public record Problem(String rule, Severity severity, Address at, String place, String sentence, Optional<Fix> fix)
        implements Comparable<Problem> {

    /** Errors first, then by file, place and rule. */
    @Override
    public int compareTo(Problem other) {
        int bySeverity = severity.compareTo(other.severity);
        int byAddress = bySeverity != 0 ? bySeverity : at.compareTo(other.at);
        int byRule = byAddress != 0 ? byAddress : rule.compareTo(other.rule);
        return byRule != 0 ? byRule : sentence.compareTo(other.sentence);
    }
}
