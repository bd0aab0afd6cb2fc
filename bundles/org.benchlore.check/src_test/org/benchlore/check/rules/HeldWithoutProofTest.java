// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.FieldNote;

class HeldWithoutProofTest extends Mirror {

    HeldWithoutProofTest() {
        super("held-without-proof", "notes/2024/note-2024-plates-worn-below-limit-r5ca.xmi",
                b -> ((FieldNote) b.top()).setVerification(null),
                "note-2024-plates-worn-below-limit-r5ca",
                b -> ((FieldNote) b.top()).setVerification("Quiet for a year."));
    }
}
