// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.HashSet;
import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.SequencePattern;

/** An order of its own names every bolt once. */
final class OrderIncomplete extends ElementRule {

    OrderIncomplete() {
        super(new About("order-incomplete", Severity.ERROR,
                "An order of its own names every bolt once",
                "A bolt that is missing from the order stays loose."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (fastening.getPattern() == SequencePattern.OWN_ORDER && !isComplete(fastening)) {
                findings.add(fastening, "The order of " + Works.name(fastening) + " does not name each of its "
                        + Works.count(fastening.getCount()) + " bolts once: write the numbers from 1, each once");
            }
        }
    }

    private static boolean isComplete(Fastening fastening) {
        int count = Works.count(fastening.getCount());
        var named = new HashSet<String>(List.of(Works.plain(fastening.getOrder()).strip().split("\\D+")));
        long valid = named.stream().filter(number -> number.matches("[1-9][0-9]{0,2}") && Integer.parseInt(number) <= count).count();
        return valid == count && Works.plain(fastening.getOrder()).strip().split("\\D+").length == count;
    }
}
