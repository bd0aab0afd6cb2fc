// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.Hazard;
import org.benchlore.page.Block.HazardPanel;

/** Writes hazard panels; whoever calls it does so before the work that they warn of. */
final class Hazards {

    private final Links links;

    Hazards(Links links) {
        this.links = links;
    }

    void write(Sheet sheet, List<Hazard> hazards) {
        hazards.forEach(hazard -> sheet.add(new HazardPanel(hazard.getSignal(), text(hazard.getKind()),
                text(hazard.getConsequence()), links.plain(hazard.getAvoidance(), hazard))));
    }

    private static String text(String words) {
        return words == null ? "" : words;
    }
}
