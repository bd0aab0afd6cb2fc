// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class ApplicabilityInvertedTest extends Mirror {

    ApplicabilityInvertedTest() {
        super("applicability-inverted", "procedures/renew-pto-actuator.xmi",
                b -> {
                    b.procedure().getApplicability().get(0).setYearFrom(2020);
                    b.procedure().getApplicability().get(0).setYearTo(2019);
                },
                "renew-pto-actuator",
                b -> {
                    b.procedure().getApplicability().get(0).setYearFrom(2019);
                    b.procedure().getApplicability().get(0).setYearTo(2019);
                });
    }
}
