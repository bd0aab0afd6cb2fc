// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Status;

class ReviewIncompleteTest extends Mirror {

    ReviewIncompleteTest() {
        super("review-incomplete", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().setReviewedOn(null),
                "renew-pto-actuator",
                b -> { b.procedure().setReviewedOn(null); b.procedure().setStatus(Status.DRAFT); });
    }
}
