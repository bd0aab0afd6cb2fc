// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Columns line up. */
class TableTest {

    @Test
    void theFirstColumnStandsLeftAndTheOthersRight() {
        var table = new Table("", "MB");
        table.add("Lucene", "1.5");
        table.add("FTS5", "12.25");
        assertEquals("""
                           MB
                Lucene    1.5
                FTS5    12.25
                """, table.toString());
    }

    @Test
    void aRowOfAnotherLengthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Table("a", "b").add("1"));
    }
}
