// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.Condition;
import org.benchlore.model.Recorded;

/** Writes lists that matter for safety: one that nobody wrote down is not the same as an empty one. */
final class Conditions {

    private final Links links;

    Conditions(Links links) {
        this.links = links;
    }

    void write(Sheet sheet, int level, String title, Recorded recorded, List<Condition> conditions) {
        if (conditions.isEmpty()) {
            empty(sheet, title, recorded);
        } else {
            sheet.bullets(level, title, conditions.stream().map(this::line).toList());
        }
    }

    /** Says why there is no list. */
    static void empty(Sheet sheet, String title, Recorded recorded) {
        sheet.labelled(title, Spans.of(recorded == Recorded.LISTED ? Texts.LISTED_BUT_EMPTY : Labels.of(recorded)));
    }

    private List<Span> line(Condition condition) {
        return Spans.concat(links.text(condition.getText(), condition),
                Spans.before(" – why: ", links.text(condition.getWhy(), condition)));
    }
}
