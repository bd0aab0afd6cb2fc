// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;

import org.benchlore.check.Mirror;
import org.benchlore.check.review.ReviewedText;

class ChangedSinceReviewTest extends Mirror {

    ChangedSinceReviewTest() {
        super("changed-since-review", "procedures/renew-pto-actuator.xmi",
                b -> { b.procedure().setReviewedHash(ReviewedText.sum(b.procedure())); b.step("step-m3tb").setText("Mark nothing."); },
                "renew-pto-actuator",
                b -> {
                    b.procedure().setReviewedHash(ReviewedText.sum(b.procedure()));
                    b.work().setMinutesCheckedOn(LocalDate.of(2026, 11, 1));
                });
    }
}
