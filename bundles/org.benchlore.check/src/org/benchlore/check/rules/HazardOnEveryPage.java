// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Set;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.LibraryFacts;
import org.benchlore.check.LibraryRule;
import org.benchlore.check.Severity;
import org.benchlore.store.Catalogue.Entry;

/** The same hazard does not stand on every page. */
final class HazardOnEveryPage extends LibraryRule {

    private static final int FEWEST = 5;

    HazardOnEveryPage() {
        super(new About("hazard-on-every-page", Severity.WARNING,
                "The same hazard does not stand on every page",
                "What stands on every page is read on none.",
                "Five procedures and more than half of all, common practice, no source. Reported once, at "
                        + "the first by path."));
    }

    @Override
    public void check(Entry entry, LibraryFacts facts, Findings findings) {
        for (var said : facts.hazardsOf().getOrDefault(entry.path(), Set.of())) {
            var paths = facts.carriers().get(said);
            if (paths.size() >= FEWEST && paths.size() * 2 > facts.procedures() && paths.first().equals(entry.path())) {
                findings.add(FilePlace.of(entry), "The hazard '" + Works.shorten(said.lines().findFirst().orElse(""))
                        + "' stands word for word in "
                        + paths.size() + " of " + facts.procedures()
                        + " procedures, first in this one: keep it where it is particular");
            }
        }
    }
}
