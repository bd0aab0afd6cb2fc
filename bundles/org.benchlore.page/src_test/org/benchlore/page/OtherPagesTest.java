// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.benchlore.page.TestBook.MAKE;
import static org.benchlore.page.TestBook.inner;
import static org.benchlore.page.TestBook.named;
import static org.benchlore.page.TestBook.to;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

import org.benchlore.measure.Amount;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Frequency;
import org.benchlore.model.Machine;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Signal;
import org.benchlore.page.Block.HazardPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of the other kinds: what is particular to each. */
class OtherPagesTest {

    @TempDir
    Path folder;

    private static Machine machine() {
        var machine = named(MAKE.createMachine(), "lifter", "Lifter");
        machine.getFunctions().add(inner(MAKE.createFunction(), "fn-lifts", "The arm lifts"));
        var system = inner(MAKE.createComponent(), "hydraulics", "Hydraulics");
        var cylinder = inner(MAKE.createComponent(), "cylinder", "Cylinder");
        cylinder.getNames().add("ram");
        cylinder.getFunctions().add(machine.getFunctions().get(0));
        var cause = inner(MAKE.createCause(), "cause-leaks", "Cylinder leaks");
        cause.setFrequency(Frequency.OFTEN);
        cause.getCodes().add(to(MAKE.createFaultCode(), "code-1"));
        cylinder.getCauses().add(cause);
        system.getComponents().add(cylinder);
        machine.getComponents().add(system);
        return machine;
    }

    @Test
    void aMachineShowsItsChainsItsTreeAndItsCauses() {
        var text = new TestBook(folder).add(machine()).text("lifter");
        assertTrue(text.contains("- The arm lifts – its chain: Cylinder\n"), text);
        assertTrue(text.contains("- Hydraulics\n  - Cylinder; also called ram\n"), text);
        assertTrue(text.contains("Cylinder leaks  Cylinder   often      code-1 (not in this library)"), text);
    }

    @Test
    void anAccessShowsItsNeedsAndWhatItMustNotMeet() {
        var machine = machine();
        var pit = inner(MAKE.createAccess(), "pit", "Over the pit");
        var lift = inner(MAKE.createAccess(), "lift", "On lifts");
        var guard = inner(MAKE.createAccess(), "guard", "Guard off");
        var need = MAKE.createNeed();
        need.getAnyOf().add(pit);
        need.getAnyOf().add(lift);
        guard.getNeeds().add(need);
        lift.getNotWith().add(pit);
        lift.setNotWithWhy("Top-heavy.");
        machine.getAccesses().add(pit);
        machine.getAccesses().add(lift);
        machine.getAccesses().add(guard);
        var text = new TestBook(folder).add(machine).text("lifter");
        assertTrue(text.contains("Needs: Over the pit or On lifts\n"), text);
        assertTrue(text.contains("Not with: Over the pit – Top-heavy.\n"), text);
        assertTrue(text.contains("Strip: not recorded\n"), text);
    }

    @Test
    void aCodeShowsTheCausesThatSetIt() {
        var code = named(MAKE.createFaultCode(), "code-1", "Travel not reached");
        code.setCode("4C17");
        var text = new TestBook(folder).add(machine()).add(code).text("code-1");
        assertTrue(text.startsWith("4C17: Travel not reached\n"), text);
        assertTrue(text.contains("- Cylinder leaks [lifter], often, on Lifter [lifter]"), text);
    }

    @Test
    void aUnitCountsWhatRefersToIt() {
        var book = new TestBook(folder).add(named(MAKE.createUnit(), "lorry-14", "Lorry 14"));
        IntStream.rangeClosed(10, 37).forEach(number -> {
            var job = named(MAKE.createJobRecord(), "job-2026-n" + number, "Job " + number);
            job.setUnit(to(MAKE.createUnit(), "lorry-14"));
            book.add(job);
        });
        var text = book.text("lorry-14");
        assertTrue(text.contains("Job records (28):\n"), text);
        assertTrue(text.contains("- Job 34 [job-2026-n34]\n- and 3 more"), text);
        assertFalse(text.contains("Job 35"));
    }

    @Test
    void aPriceWithoutADaySaysSo() {
        var part = named(MAKE.createPart(), "seal", "Seal");
        part.setPrice(Amount.parse("19.70"));
        assertTrue(new TestBook(folder).add(part).text("seal").contains("19.70 (day not recorded)"));
    }

    @Test
    void aPartShowsWhereItLies() {
        var shop = named(MAKE.createShop(), "shop", "Shop");
        var site = inner(MAKE.createSite(), "hall", "Hall 2");
        var line = MAKE.createStockLine();
        line.setId("stock-a");
        line.setPart(to(MAKE.createPart(), "seal"));
        line.setQuantity(Quantity.parse("4 pcs"));
        line.setPlace("Shelf 4-1");
        site.getStock().add(line);
        shop.getSites().add(site);
        var text = new TestBook(folder).add(shop).add(named(MAKE.createPart(), "seal", "Seal")).text("seal");
        assertTrue(text.contains("Hall 2  Shelf 4-1  4 pcs"), text);
    }

    @Test
    void aSupplysHazardsComeFirstAndItsPageEndsWithTheCaution() {
        var supply = named(MAKE.createSupply(), "cleaner", "Cleaner");
        var hazard = MAKE.createHazard();
        hazard.setSignal(Signal.WARNING);
        hazard.setKind("Flammable");
        supply.getHazards().add(hazard);
        var page = new TestBook(folder).add(supply).page("cleaner");
        assertEquals(new HazardPanel(Signal.WARNING, "Flammable", "", ""), page.blocks().get(1));
        assertEquals("CAUTION " + Texts.CHECK_FIRST, TestBook.banners(page).get(0));
    }

    @Test
    void aPageWithoutTorqueOrHazardCarriesNoCaution() {
        var page = new TestBook(folder).add(named(MAKE.createPart(), "seal", "Seal")).page("seal");
        assertEquals(List.of(), TestBook.banners(page));
    }

    @Test
    void aJobShowsItsRoundsInOrderWithAskedAndSetTorque() {
        var job = named(MAKE.createJobRecord(), "job-2026-a", "Job");
        var strip = MAKE.createRound();
        strip.setKind(RoundKind.STRIP);
        var failed = MAKE.createRound();
        failed.setKind(RoundKind.TEACH_IN_FAILED);
        var tightened = MAKE.createTightened();
        tightened.setFastening(to(MAKE.createFastening(), "procedures/gone.xmi", "fastening-nut"));
        tightened.setTorque(Quantity.parse("180 N·m"));
        failed.getTightened().add(tightened);
        job.getRounds().add(strip);
        job.getRounds().add(failed);
        var text = new TestBook(folder).add(job).text("job-2026-a");
        assertTrue(text.indexOf("Round 1: strip\n") < text.indexOf("Round 2: teach-in failed\n"), text);
        assertTrue(text.contains("fastening-nut (not in this library)  180 N·m"), text);
        assertTrue(text.contains("*** CAUTION: Check against"), text);
    }

    @Test
    void theGlossaryShowsTheShopsOwnWordFirst() {
        var glossary = named(MAKE.createGlossary(), "glossary", "Words");
        var entry = MAKE.createGlossaryEntry();
        entry.setId("word-a");
        entry.getWords().add("power take-off");
        entry.getWords().add("PTO");
        glossary.getEntries().add(entry);
        assertTrue(new TestBook(folder).add(glossary).text("glossary").contains("power take-off  PTO"));
    }
}
