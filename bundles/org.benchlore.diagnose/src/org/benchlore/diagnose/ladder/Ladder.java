// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.ladder;

import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.Named;

/**
 * What to look at, in order, when work was done and did not cure.
 *
 * @param work the work
 * @param job the job record it was read from, if there is one
 * @param rungs five rungs, an empty one where there is nothing to look at
 * @param killed asks what brought the failed parts about and what they may have spoiled, one line each
 */
public record Ladder(Named work, Optional<Named> job, List<Rung> rungs, List<String> killed) {

    /** What it asks before any part is bought twice. */
    public static final String ASKS = "What killed it, and what did it kill?";

    /**
     * Returns the next thing to look at: what was found wrong, else the first that is open.
     *
     * @return the item, or empty if nothing is left
     */
    public Optional<Item> next() {
        var items = rungs.stream().flatMap(rung -> rung.items().stream()).toList();
        return items.stream().filter(item -> item.state() == Item.State.BAD).findFirst()
                .or(() -> items.stream().filter(item -> item.state() == Item.State.OPEN).findFirst());
    }
}
