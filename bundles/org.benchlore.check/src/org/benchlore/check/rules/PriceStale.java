// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Part;
import org.benchlore.model.Supply;
import org.benchlore.model.TopElement;

/** Prices have a date and are not older than two years. */
final class PriceStale extends ElementRule {

    private final LocalDate today;

    private static final int MOST = 24;

    PriceStale(LocalDate today) {
        super(new About("price-stale", Severity.WARNING,
                "Prices have a date and are not older than two years",
                "The job is offered at yesterday's price.",
                "Two years are common practice, no source. Superseded parts are passed over."));
        this.today = today;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        if (subject.top() instanceof Part part && part.getPrice() != null && part.getSupersededBy() == null) {
            report(part, part.getPriceOn(), findings);
        } else if (subject.top() instanceof Supply supply && supply.getPrice() != null) {
            report(supply, supply.getPriceOn(), findings);
        }
    }

    private void report(TopElement element, LocalDate day, Findings findings) {
        if (day == null || day.plusMonths(MOST).isBefore(today)) {
            findings.add(element, day == null ? "The price has no date: write the day it was asked for"
                    : "The price is of " + day + ": ask for it again");
        }
    }
}
