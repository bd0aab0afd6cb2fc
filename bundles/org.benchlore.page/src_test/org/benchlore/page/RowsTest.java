// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;

import org.benchlore.page.Block.Table;
import org.junit.jupiter.api.Test;

/** Tables being collected. */
class RowsTest {

    @Test
    void columnsThatStayEmptyAreLeftOut() {
        var rows = new Rows("Tools", "Tool", "Number", "Remark").row(Spans.of("Press"), List.of(), Spans.of("new"))
                .row(Spans.of("Jack"), List.of(), List.of());
        assertEquals(Optional.of(new Table("Tools", List.of("Tool", "Remark"),
                List.of(List.of(Spans.of("Press"), Spans.of("new")), List.of(Spans.of("Jack"), List.of())))),
                rows.table());
    }

    @Test
    void noRowsMakeNoTable() {
        assertEquals(Optional.empty(), new Rows("Tools", "Tool").table());
    }

    @Test
    void aRowOfAnotherLengthIsAMistakeOfTheProgram() {
        assertThrows(IllegalArgumentException.class, () -> new Rows("Tools", "Tool").row(List.of(), List.of()));
    }
}
