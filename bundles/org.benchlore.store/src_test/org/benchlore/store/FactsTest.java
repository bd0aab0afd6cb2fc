// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.KindFacts.Left;
import org.benchlore.store.KindFacts.Life;
import org.benchlore.store.KindFacts.MachineFacts;
import org.benchlore.store.KindFacts.NoteFacts;
import org.benchlore.store.KindFacts.PartFacts;
import org.benchlore.store.KindFacts.Renewal;
import org.benchlore.store.KindFacts.Sighting;
import org.benchlore.store.KindFacts.Tally;
import org.benchlore.store.KindFacts.UnitFacts;
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
                        + " closed=\"2026-03-04\" meter=\"148200 km\" comebackReason=\"PART_LEFT_IN\"><unit href=\"../../units/u.xmi#u\"/>"
                        + "<rounds id=\"r1\"><done><procedure href=\"../../procedures/p.xmi#p\"/>"
                        + "<renewed href=\"../../machines/m.xmi#plates\"/><fitted href=\"../../parts/kit.xmi#kit\"/></done></rounds>"
                        + "<rounds id=\"r2\" kind=\"STRIP_AGAIN\"><done>"
                        + "<renewed href=\"../../machines/m.xmi#actuator\"/></done></rounds>"
                        + "<left><component href=\"../../machines/m.xmi#actuator\"/><part href=\"../../parts/old.xmi#old\"/>"
                        + "<confirmedBy href=\"../../shop.xmi#jp\"/></left>"
                        + "<failed href=\"../../machines/m.xmi#actuator\"/></book:JobRecord>");
        try (var library = files.open()) {
            var job = library.catalogue().byId("job-2026-one-aaaa").flatMap(Row::job).orElseThrow();
            var plates = new Address("machines/m.xmi", "plates");
            var actuator = new Address("machines/m.xmi", "actuator");
            assertEquals(new JobFacts(Optional.of(new Address("units/u.xmi", "u")),
                    List.of(new Address("procedures/p.xmi", "p")),
                    List.of(new Renewal(plates, List.of(new Address("parts/kit.xmi", "kit")), false),
                            new Renewal(actuator, List.of(), true)),
                    List.of(new Left(actuator, Optional.of(new Address("parts/old.xmi", "old")), true)),
                    List.of(actuator), "148200 km", Optional.of(LocalDate.of(2026, 3, 4)), Optional.empty(),
                    "PART_LEFT_IN"), job);
            assertEquals(List.of(plates, actuator), job.renewed());
            assertEquals(List.of(actuator), job.left());
        }
    }

    @Test
    void whatOnlyOneKindHasStandsBesideTheRest() throws Exception {
        var files = new TestLibrary(folder)
                .put("machines/m.xmi", "<book:Machine %s id=\"m\" formatVersion=\"1\" title=\"M\" family=\"F\">"
                        + "<components id=\"pump\"><parts href=\"../parts/old.xmi#old\"/><causes id=\"leak\"/>"
                        + "</components></book:Machine>")
                .put("parts/old.xmi", "<book:Part %s id=\"old\" formatVersion=\"1\" title=\"Old\">"
                        + "<supersededBy href=\"new.xmi#new\"/><life shape=\"2.5\" scale=\"4000 h\"/></book:Part>")
                .put("units/u.xmi", "<book:Unit %s id=\"u\" formatVersion=\"1\" title=\"U\" keptUntil=\"2028\"/>")
                .note("note-2026-one-aaaa", "", "<job href=\"../../jobs/2026/j.xmi#j\"/>"
                        + "<seen count=\"1\" ofAbout=\"40\" since=\"2021\"><sightings date=\"2022-09-13\"><unit href=\"../../units/u.xmi#u\"/></sightings>"
                        + "<sightings/></seen>");
        try (var library = files.open()) {
            var facts = library.catalogue();
            assertEquals(Optional.of(new MachineFacts("F", Map.of("leak", "pump"),
                    Map.of("pump", List.of(new Address("parts/old.xmi", "old"))))),
                    facts.byId("m").flatMap(row -> row.facts(MachineFacts.class)));
            assertEquals(Optional.of(new PartFacts(Optional.of(new Address("parts/new.xmi", "new")),
                    Optional.of(new Life(new BigDecimal("2.5"), "4000 h")))),
                    facts.byId("old").flatMap(row -> row.facts(PartFacts.class)));
            assertEquals(Optional.of(new UnitFacts(2028)),
                    facts.byId("u").flatMap(row -> row.facts(UnitFacts.class)));
            assertEquals(Optional.of(new NoteFacts(Optional.empty(), Optional.empty(),
                    Optional.of(new Address("jobs/2026/j.xmi", "j")), Optional.of(new Tally(2, 40, 2021, List.of(
                            new Sighting(Optional.of(new Address("units/u.xmi", "u")),
                                    Optional.of(LocalDate.of(2022, 9, 13))),
                            new Sighting(Optional.empty(), Optional.empty())))))),
                    facts.byId("note-2026-one-aaaa").flatMap(row -> row.facts(NoteFacts.class)));
            assertEquals(List.copyOf(facts.entries()),
                    List.copyOf(new CatalogueFile(files.cache().resolve("catalogue")).read().values()));
        }
    }
}
