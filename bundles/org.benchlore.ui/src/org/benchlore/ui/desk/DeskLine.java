// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import java.util.Optional;

import org.benchlore.model.Kind;
import org.benchlore.store.Row;

/**
 * Something that waits on the desk.
 *
 * @param section where it stands
 * @param row what it is about
 * @param other the other one of a pair, or the later job
 * @param words what is shown beside the title
 */
record DeskLine(Section section, Row row, Optional<Row> other, String words) {

    boolean isNote() {
        return row.kind() == Kind.NOTE;
    }

    /** Tells whether this is about the same as a line of another state of the library. */
    boolean isSameAs(DeskLine line) {
        return section == line.section && row.address().equals(line.row.address())
                && other.map(Row::address).equals(line.other.map(Row::address));
    }
}
