// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ElementIdTest {

    @ParameterizedTest
    @ValueSource(strings = {"a", "shim-kit-05", "note-2026-x-k3f9", "com10", "console"})
    void wellFormedIdsAreTaken(String id) {
        assertEquals(id, ElementId.check(id));
    }

    static Stream<String> badIds() {
        return Stream.of("", "A", "with blank", "-a", "a-", "a--b", "1a", "ä", "a_b", "a.b", "a/b", "../a", "a\n",
                "con", "aux", "com1", "lpt9", "nul", "a".repeat(65));
    }

    @ParameterizedTest
    @MethodSource("badIds")
    void otherIdsAreRefusedWithASentence(String id) {
        var failure = assertThrows(IllegalArgumentException.class, () -> ElementId.check(id));
        assertTrue(failure.getMessage().contains("is no id"), failure.getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "PART, Shim kit 0.5 mm, shim-kit-0-5-mm",
        "MACHINE, 40-tonne crane, x40-tonne-crane",
        "TOOL, Öldruck-Prüfgerät, oldruck-prufgerat",
        "PART, CON, part",
        "PART, ..., part"})
    void aTitleMakesAnId(Kind kind, String title, String id) {
        assertEquals(id, ElementId.create(kind, title, 2026, new Random(1)));
    }

    @Test
    void notesAndJobsCarryTheirYearAndASuffix() {
        var random = new Random(1);
        var first = ElementId.create(Kind.NOTE, "Will not learn in", 2026, random);
        var second = ElementId.create(Kind.NOTE, "Will not learn in", 2026, random);
        assertTrue(first.matches("note-2026-will-not-learn-in-[a-z2-9]{4}"), first);
        assertNotEquals(first, second);
    }

    @Test
    void whateverTheTitleTheIdIsWellFormedAndHasAPath() {
        var random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            var title = random.ints(random.nextInt(120), 0, 0x2fff).mapToObj(Character::toString)
                    .reduce("", String::concat);
            for (var kind : new Kind[] {Kind.NOTE, Kind.JOB, Kind.PART, Kind.PROCEDURE}) {
                var id = ElementId.create(kind, title, 2026, random);
                assertEquals(id, ElementId.check(id));
                assertTrue(kind.path(id).endsWith(id + ".xmi"));
            }
            ElementId.check(ElementId.inner(title, random));
        }
    }
}
