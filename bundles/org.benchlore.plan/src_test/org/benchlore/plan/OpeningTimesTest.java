// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.plan.QuayCrane.access;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.plan.search.PlanException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How soon something is within reach: only opening counts, and what is shared counts once. */
class OpeningTimesTest {

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void threeCovers() throws Exception {
        crane = new QuayCrane(folder).crane(access("hood", "", "minutesUsual=\"10 min\"", "minutesUsual=\"99 min\"", "")
                + access("door", "", "minutesUsual=\"7 min\"", "", "") + access("lid", "hood|door", "minutesUsual=\"5 min\"", "", "")
                + access("core", "lid", "minutesUsual=\"2 min\" minutesBad=\"30 min\"", "", ""));
    }

    private String opened(String... wanted) throws Exception {
        try (var library = crane.open()) {
            var times = new OpeningTimes(library, (Machine) library.top("crane").orElseThrow());
            var found = times.open(List.of(wanted).stream().map(id -> List.of(List.of(id.split("[|]")))).toList());
            return found.minutes() + " " + found.accesses().stream().map(it -> it.getId()).toList();
        }
    }

    @Test
    void onlyOpeningCountsAndTheCheaperWayIsTaken() throws Exception {
        assertEquals("10 [hood]", opened("hood"));
        assertEquals("12 [door, lid]", opened("lid"));
        assertEquals("7 [door]", opened("hood|door"));
        assertEquals("0 []", opened());
    }

    @Test
    void whatIsSharedIsOpenedOnce() throws Exception {
        assertEquals("17 [hood, lid, core]", opened("hood", "core"));
        assertEquals("14 [door, lid, core]", opened("lid", "core"));
    }

    @Test
    void whatTheMachineDoesNotHaveCannotBeOpened() {
        assertThrows(PlanException.class, () -> opened("roof"));
    }

    private Optional<List<List<String>>> needs(String needs) throws Exception {
        crane.work("look", "INSPECT", needs, "", "");
        try (var library = crane.open()) {
            var procedure = (Procedure) library.top("look").orElseThrow();
            return new OpeningTimes(library, (Machine) library.top("crane").orElseThrow()).needs(procedure.getWays().get(0).getNeeds());
        }
    }

    @Test
    void aNeedOfOtherMachinesOnlyIsNotForThisOne() throws Exception {
        assertEquals(Optional.of(List.of(List.of("hood", "door"), List.of("lid"))), needs("hood|door lid"));
        assertEquals(Optional.empty(), needs("hood hatch"));
        assertEquals(Optional.of(List.of(List.of("hood"))), needs("hatch|hood"), "the other one will do");
        assertEquals(Optional.of(List.of()), needs(""));
    }
}
