// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.evidence.decide.Reason;
import org.benchlore.model.Address;
import org.benchlore.model.Addition;
import org.benchlore.model.Component;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Procedure;

/**
 * Something that is thought of, before it is planned.
 *
 * @param id id of the procedure, or of the note's addition
 * @param procedure the procedure, if one is written
 * @param component what it is done on, if known
 * @param notes notes that say so
 * @param addition figures of the first of them that gives some
 */
record Idea(String id, Optional<Procedure> procedure, Optional<Component> component, List<FieldNote> notes,
        Optional<Addition> addition) {

    String title() {
        return procedure.map(it -> it.getTitle() == null ? it.getId() : it.getTitle())
                .or(() -> addition.map(Addition::getWorkText)).orElse(id);
    }

    /**
     * What speaks for an idea.
     *
     * @param reasons why it is thought of
     * @param known what was counted
     * @param address address of the component
     */
    record Speaks(Set<Reason> reasons, Known known, Optional<Address> address) {
    }

    /** Price of a part that a note gives, without tax. */
    Optional<BigDecimal> notedPrice() {
        return addition.map(Addition::getPartPrice).map(price -> price.value());
    }
}
