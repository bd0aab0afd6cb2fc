// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FactsTest {

    @TempDir
    Path folder;

    @Test
    void aNoteSaysWhatItIsAbout() throws Exception {
        var files = new TestLibrary(folder).note("note-2026-one-aaaa", "status=\"HELD\" date=\"2026-03-04\" invented=\"true\"",
                "<symptoms>will not engage</symptoms><machine href=\"../../machines/m.xmi#m\"/>"
                        + "<codesAsWritten>4C 17</codesAsWritten><component href=\"../../machines/m.xmi#pump\"/>"
                        + "<cause href=\"../../machines/m.xmi#leak\"/>");
        try (var library = files.open()) {
            var row = library.catalogue().byId("note-2026-one-aaaa").orElseThrow();
            assertEquals("HELD", row.status());
            assertEquals(Optional.of(LocalDate.of(2026, 3, 4)), row.date());
            assertEquals(List.of("will not engage"), row.symptoms());
            assertEquals(List.of("4C 17"), row.codes());
            assertEquals(List.of(new Address("machines/m.xmi", "m")), row.machines());
            assertEquals(List.of(new Address("machines/m.xmi", "pump")), row.components());
            assertEquals(Optional.of(new Address("machines/m.xmi", "leak")), row.cause());
        }
    }

    @Test
    void aPartIsKnownByItsNumberAlsoWhenTheCatalogueIsReadAgain() throws Exception {
        new TestLibrary(folder).put("parts/chain.xmi", "<book:Part %s id=\"chain\" formatVersion=\"1\" title=\"Chain\""
                + " number=\"QB-20.114 A\"/>");
        for (int i = 0; i < 2; i++) {
            try (var library = new TestLibrary(folder).open()) {
                assertEquals(List.of("QB-20.114 A"), library.catalogue().byId("chain").orElseThrow().numbers());
            }
        }
    }

    @Test
    void aJobSaysWhatWasDoneAndWhatWasLeft() throws Exception {
        var files = new TestLibrary(folder).put("jobs/2026/job-2026-one-aaaa.xmi",
                "<book:JobRecord %s id=\"job-2026-one-aaaa\" formatVersion=\"1\" title=\"Job\" state=\"CLOSED\""
                        + " meter=\"148200 km\" comebackReason=\"PART_LEFT_IN\"><unit href=\"../../units/u.xmi#u\"/>"
                        + "<rounds id=\"r1\"><done><procedure href=\"../../procedures/p.xmi#p\"/>"
                        + "<renewed href=\"../../machines/m.xmi#plates\"/></done></rounds>"
                        + "<left><component href=\"../../machines/m.xmi#actuator\"/></left></book:JobRecord>");
        try (var library = files.open()) {
            var job = library.catalogue().byId("job-2026-one-aaaa").flatMap(Row::job).orElseThrow();
            assertEquals(new Row.JobFacts(Optional.of(new Address("units/u.xmi", "u")),
                    List.of(new Address("procedures/p.xmi", "p")), List.of(new Address("machines/m.xmi", "plates")),
                    List.of(new Address("machines/m.xmi", "actuator")), "148200 km", Optional.empty(), "PART_LEFT_IN"),
                    job);
        }
    }
}
