// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinkPieceTest {

    @ParameterizedTest
    @CsvSource({"'See {pto act', 13, 'pto act'", "'See {part:pto', 13, pto", "'{', 1, ''", "'a {b} c {dd', 11, dd"})
    void whatStandsBehindAnOpenBraceIsLookedFor(String text, int cursor, String wanted) {
        assertEquals(wanted, LinkPiece.at(text, cursor).orElseThrow().wanted());
    }

    @ParameterizedTest
    @CsvSource({"'See {part:pto} then', 19", "'no brace', 8", "'See {pto', 4"})
    void aClosedOrLaterBraceIsNone(String text, int cursor) {
        assertEquals(Optional.empty(), LinkPiece.at(text, cursor));
    }

    @Test
    void aPieceEndsWithTheLine() {
        assertEquals(Optional.empty(), LinkPiece.at("a {b\nc", 6));
    }
}
