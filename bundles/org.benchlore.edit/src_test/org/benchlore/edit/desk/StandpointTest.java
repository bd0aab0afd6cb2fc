// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.model.Address;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is known of the place somebody stands at. */
class StandpointTest {

    private static final Optional<Address> JOB = Optional.of(Address.parse("jobs/2026/job-2026-weak-s7-skvy.xmi#job-2026-weak-s7-skvy"));

    @TempDir
    Path folder;

    private Standpoint standpoint;

    @BeforeEach
    void open() {
        standpoint = new Standpoint(new DemoCopy(folder).sessions().library());
    }

    private static List<String> symptoms(List<Proposal> place) {
        return place.stream().filter(one -> one.what() == What.SYMPTOM).map(Proposal::text).toList();
    }

    @Test
    void aCaseBeginsWithWhatTheCustomerSaid() {
        assertEquals(List.of("Pulls nothing any more when half full."), symptoms(standpoint.ofCase(JOB, "")));
    }

    @Test
    void aNoteDoesNotBeginWithWhatTheCustomerSaid() {
        var place = standpoint.of(JOB, "");
        assertEquals(List.of(), symptoms(place));
        assertEquals(1, place.stream().filter(one -> one.what() == What.UNIT).count());
    }

    @Test
    void nowhereIsNoCase() {
        assertEquals(List.of(), standpoint.ofCase(Optional.empty(), ""));
    }
}
