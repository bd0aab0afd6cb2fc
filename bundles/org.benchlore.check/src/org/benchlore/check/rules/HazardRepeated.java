// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Hazard;

/** The same hazard does not stand at every step. */
final class HazardRepeated extends ElementRule {

    private static final int MOST = 3;

    HazardRepeated() {
        super(new About("hazard-repeated", Severity.WARNING,
                "The same hazard does not stand at every step",
                "What stands everywhere is read nowhere."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            var seen = new LinkedHashMap<String, List<Hazard>>();
            Works.hazards(work).forEach(hazard -> seen.computeIfAbsent(said(hazard), key -> new ArrayList<>()).add(hazard));
            seen.values().stream().filter(same -> same.size() > MOST).forEach(same -> findings.add(same.get(0),
                    "The hazard '" + Works.shorten(same.get(0).getKind()) + "' stands " + same.size()
                            + " times in one work word for word: "
                            + "put it once before the first step"));
        }
    }

    private static String said(Hazard hazard) {
        return Works.plain(hazard.getKind()) + "\n" + Works.plain(hazard.getConsequence()) + "\n" + Works.plain(hazard.getAvoidance());
    }
}
