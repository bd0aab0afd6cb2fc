// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Suppression;

class SuppressionUnfoundedTest extends Mirror {

    SuppressionUnfoundedTest() {
        super("suppression-unfounded", "shop.xmi",
                b -> b.get("suppression-c7hv", Suppression.class).setReason(null),
                "suppression-c7hv",
                b -> b.get("suppression-c7hv", Suppression.class).setReason("So it is."));
    }
}
