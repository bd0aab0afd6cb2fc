// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.util.List;
import java.util.Optional;

import org.benchlore.evidence.CountWords;
import org.benchlore.evidence.Findings;
import org.benchlore.model.Address;

/**
 * What is known of how one that is left in goes on.
 *
 * @param findings what was counted of the number that is in the unit
 * @param oldPart that number, where a job says it
 * @param newPart the number that would be fitted, where it is known
 * @param before what was counted of the number before it, where nothing is known of this one
 */
public record Known(Findings findings, Optional<Address> oldPart, Optional<Address> newPart, Optional<Findings> before) {

    /** Whether there is a figure to decide by. */
    public boolean isKnown() {
        return findings.isKnown();
    }

    /** How often it was seen, in words: a count under three cases. */
    public String words() {
        var own = CountWords.of(findings);
        return before.filter(Findings::isKnown).map(it -> own + " with the part number that is in it; with the one before it: "
                + CountWords.of(it)).orElse(own);
    }

    /** What was passed over in counting and why. */
    public List<String> passedOver() {
        return CountWords.passedOver(findings.left());
    }

    /** How many jobs the figure is worth. */
    double weight() {
        return findings.comeback().failed() + findings.comeback().sound();
    }
}
