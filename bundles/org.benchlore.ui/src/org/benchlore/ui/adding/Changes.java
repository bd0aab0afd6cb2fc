// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;

import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Figure;

/**
 * Figures that a person has put in place of the shop's own.
 *
 * @param figures by proposal
 */
record Changes(Map<String, Map<Figure, BigDecimal>> figures) {

    static final Changes NONE = new Changes(Map.of());

    Changes {
        figures = Map.copyOf(figures);
    }

    Changes with(String proposal, Figure figure, BigDecimal value) {
        var changed = new HashMap<>(of(proposal));
        changed.put(figure, value);
        return put(proposal, changed);
    }

    Changes without(String proposal, Figure figure) {
        var changed = new HashMap<>(of(proposal));
        changed.remove(figure);
        return put(proposal, changed);
    }

    Changes without(String proposal) {
        return put(proposal, Map.of());
    }

    private Changes put(String proposal, Map<Figure, BigDecimal> changed) {
        var all = new HashMap<>(figures);
        all.put(proposal, Map.copyOf(changed));
        return new Changes(all);
    }

    Map<Figure, BigDecimal> of(String proposal) {
        return figures.getOrDefault(proposal, Map.of());
    }

    /** The answer with these figures; what is no longer in it is passed over. */
    Adding applied(Adding own) {
        var adding = own;
        for (var one : figures.entrySet()) {
            for (var figure : one.getValue().entrySet()) {
                adding = adding.change(one.getKey(), it -> it.with(figure.getKey(), figure.getValue()));
            }
        }
        return adding;
    }
}
