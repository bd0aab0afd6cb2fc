// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;

class WantedTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 7);
    private static final Wanted STRIPPED = new Wanted("lorry", List.of("pack", "actuator"), List.of("unit-out"),
            List.of("pack"));

    @Test
    void anotherUnitStandsClosedWithTheSameWorkToDo() {
        assertEquals(new Wanted("other", List.of("pack", "actuator"), List.of(), List.of()), STRIPPED.on("other"));
    }

    @Test
    void theSameUnitPickedAgainStandsAsItDid() {
        assertEquals(STRIPPED, STRIPPED.on("lorry"));
    }

    @Test
    void whatIsDoneIsNotAskedForAgain() {
        var request = STRIPPED.request(DAY);
        assertEquals(List.of("actuator"), request.procedures());
        assertEquals(List.of("pack"), request.done());
    }

    @Test
    void workIsPickedOnceHoweverOftenItIsTaken() {
        assertEquals(List.of("pack"), Wanted.NOTHING.adding("pack").adding("pack").work());
    }

    @Test
    void workThatIsTakenOutIsNeitherToDoNorDone() {
        assertEquals(new Wanted("lorry", List.of("actuator"), List.of("unit-out"), List.of()), STRIPPED.removing("pack"));
    }

    @Test
    void aMachineThatStandsOpenIsEnoughToPlanItsClosing() {
        assertFalse(Wanted.NOTHING.on("lorry").isEnough());
        assertTrue(Wanted.NOTHING.on("lorry").opened("unit-out", true).isEnough());
        assertFalse(Wanted.NOTHING.on("lorry").opened("unit-out", true).opened("unit-out", false).isEnough());
    }
}
