// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.eclipse.emf.ecore.util.EcoreUtil;

class HazardOnEveryPageTest extends Mirror {

    private static final String OF = "procedures/leak-check-pto.xmi";

    HazardOnEveryPageTest() {
        super("hazard-on-every-page", OF, b -> among(b, 1), first(), b -> among(b, 3));
    }

    private static String first() {
        var path = Spoil.procedures().get(0);
        return path + "#" + path.substring(path.indexOf('/') + 1, path.indexOf('.'));
    }

    /** Puts a hazard of one procedure into every one of so many others. */
    private static void among(Spoil b, int oneIn) {
        var said = b.work().getHazards().get(0);
        var procedures = Spoil.procedures();
        for (int i = 0; i < procedures.size(); i += oneIn) {
            if (!procedures.get(i).equals(OF)) {
                b.other(procedures.get(i), other -> other.work().getHazards().add(EcoreUtil.copy(said)));
            }
        }
    }
}
