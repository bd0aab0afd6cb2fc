// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.benchlore.evidence.decide.Option;
import org.benchlore.evidence.decide.Reason;
import org.benchlore.plan.search.PlanException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is worth adding, over a copy of the demonstration library; all figures invented, reckoned by hand beside them. */
class AddingTest {

    private static final String PACK = "renew-pto-clutch-pack";
    private static final String ACTUATOR = "renew-pto-actuator";
    private static final String FILTER = "renew-pto-pack-filter";
    private static final String PLUG = "addition-4huc";
    private static final String VALVE = "renew-van-egr-valve";
    private static final String FILTER_FILE = "procedures/renew-pto-pack-filter.xmi";
    private static final String FILTER_NOTE = "notes/2026/note-2026-filter-black-after-burnt-pack-g8mq.xmi";

    @TempDir
    Path place;

    private AddingBook book;

    @BeforeEach
    void copy() {
        book = new AddingBook(place);
    }

    private static BigDecimal money(String amount) {
        return new BigDecimal(amount);
    }

    private static Proposal actuator(Adding adding) {
        return adding.proposal(ACTUATOR).orElseThrow();
    }

    /**
     * Common practice, no source: with the unit open, renewing the actuator beside it adds minutes, afterwards the whole strip.
     * Minutes: 20 for the work and 5 for its pressure test; afterwards the 650 of its own plan. Extra without tax: senior
     * 25/60 × 98 = 40.83 (725 min 1184.17 less 700 min 1143.33 = 40.84 by lines), actuator 286.00, bolts 3 × 1.10 = 3.30, seal
     * 3.40, fluid 6.05 − 5.58 = 0.47: 334.01. With 21 %: 3088.65 − 2684.49 = 404.16.
     */
    @Test
    void withTheUnitOpenTheActuatorAddsMinutesAfterwardsTheWholeStrip() throws Exception {
        var one = actuator(book.adding("lorry-21", PACK));
        assertEquals(25, one.extra());
        assertEquals(650, one.apart());
        assertEquals(money("404.16"), one.assumptions().value(Figure.EXTRA));
        assertEquals(money("334.01"), one.assumptions().value(Figure.SHOP_EXTRA));
        assertEquals(Map.of(), one.openings(), "it lies open with the pack");
    }

    /**
     * Its own plan 2065.69 with tax; of it parts (286 + 3.30 + 3.40 + 12.40 + 48 + 23.60 + 1.70) × 1.21 = 378.40 × 1.21 = 457.86,
     * supplies (6.05 + 0.93 + 60.80) × 1.21 = 82.01, labour the rest, 1525.82. Finding out: 25 min of a technician, 35.00, so
     * 42.35. Ruined: the plates with the pack, 3088.65 − 2065.69 = 1022.96, taken as every time. Together 3131.00.
     */
    @Test
    void apartLaterIsItsOwnPlanWithFindingOutAndWhatIsRuined() throws Exception {
        var sum = actuator(book.adding("lorry-21", PACK)).assumptions().customer();
        assertEquals(money("1525.82"), sum.again().labour());
        assertEquals(money("457.86"), sum.again().part());
        assertEquals(money("82.01"), sum.again().supplies());
        assertEquals(money("42.35"), sum.again().finding());
        assertEquals(money("1022.96"), sum.again().ruins());
        assertEquals(money("3131.00"), sum.apartLater());
    }

    /**
     * The note: 3 of about 40, worth 10 jobs: 0.75 against 9.25. Lorry 17's job of 2025 and lorry 8's of 2022 are older than
     * the note and in it already. Two are younger: lorry 8 kept its old one in 2025 and it held, lorry 25 in 2026 came apart
     * again, so 4 of about 42, and 1.75 of 12, 0.1458. Renewals followed for half a year: two, none came back: q = 10 × 0.005
     * / 12 = 0.004167. Leaving 0.1458 × 3131 = 456.60; renewing 404.16 + 0.004167 × 3131 = 417.21; it pays from 404.16 / 3131
     * + 0.004167 = 0.1333, about 1 in 8. Lorry 25 tipped it: with the note alone, 0.075, leaving it cost 234.83.
     */
    @Test
    void theCountIsTheNotesAndTheVerdictFollows() throws Exception {
        var one = actuator(book.adding("lorry-21", PACK));
        var customer = one.decision().customer();
        assertEquals("about 1 in 11 of ours (4 of about 42)", one.known().words());
        assertEquals(List.of("2 jobs that are the cases the note counts"), one.known().passedOver());
        assertEquals(Map.of(Option.LEAVE, money("456.60"), Option.RENEW, money("417.21")), customer.costs());
        assertEquals(0.1333, customer.breakEven().getAsDouble(), 0.0001);
        assertTrue(customer.pays());
    }

    /** Lorry 17 has the new number since its job of 2025: the note speaks of the first execution, so nothing is recorded. */
    @Test
    void lorry17HasTheNewNumberAndItsCountIsSaidToBeOfTheOneBefore() throws Exception {
        var one = actuator(book.adding("lorry-17", PACK));
        assertFalse(one.known().isKnown());
        assertEquals("pto-actuator", one.known().oldPart().orElseThrow().id());
        assertEquals("nothing is recorded with the part number that is in it; with the one before it: about 1 in 11 of ours"
                + " (4 of about 42)", one.known().words());
        assertTrue(one.decision().customer().costs().isEmpty(), "no sum out of nothing");
    }

    /** 1707.18 its own plan; finding out and ruined (42.35 + 1022.96) / 1.21 = 880.42; a comeback 280: 2867.60. */
    @Test
    void theShopsSumIsItsOwnWithoutTaxAndHoldsNothingOfTheCustomers() throws Exception {
        var own = actuator(book.adding("lorry-21", PACK)).assumptions().shop().orElseThrow();
        assertEquals(money("2867.60"), own.apartLater());
        var dearer = actuator(book.adding("lorry-21", PACK)).with(Figure.DAY_OUT, money("350"));
        assertEquals(money("2867.60"), dearer.assumptions().shop().orElseThrow().apartLater());
    }

    /** 6 days × 350 = 2100 more: 5231.00; 0.1458 × 5231 = 762.85 against 404.16 + 0.0041667 × 5231 = 425.96, 2 days for parts not waited for. */
    @Test
    void aChangedFigureGivesNewTotalsAndLeavesTheOldOnesAlone() throws Exception {
        var adding = book.adding("lorry-21", PACK);
        var changed = adding.change(ACTUATOR, it -> it.with(Figure.DAY_OUT, money("350")));
        assertEquals(money("5231.00"), actuator(changed).assumptions().customer().apartLater());
        assertEquals(money("762.85"), actuator(changed).decision().customer().costs().get(Option.LEAVE));
        assertEquals(money("425.96"), actuator(changed).decision().customer().costs().get(Option.RENEW));
        assertEquals(money("3131.00"), actuator(adding).assumptions().customer().apartLater());
    }

    @Test
    void noLaterRepairCostsMoreThanTheUnitIsWorth() throws Exception {
        var one = actuator(book.adding("lorry-21", PACK)).with(Figure.UNIT_VALUE, money("1500"));
        assertEquals(money("1500"), one.assumptions().customer().apartLater());
    }

    /** Leaving 0.3 × 3131 = 939.30; renewing as before 417.21: worth it. */
    @Test
    void aChanceOfOnesOwnTurnsTheVerdict() throws Exception {
        var one = actuator(book.adding("lorry-17", PACK)).with(Figure.COMES_BACK, money("30"));
        assertEquals(money("939.30"), one.decision().customer().costs().get(Option.LEAVE));
        assertTrue(one.decision().customer().pays());
    }

    /** Testing 42.35, finds 8 of 10, blames 1 of 10: 42.35 + (0.11667 + 0.08542) × 417.21 + 0.02917 × 3131 = 42.35 + 84.31 + 91.32. */
    @Test
    void allFourWaysHaveASumOnceItIsSaidHowWellOneSees() throws Exception {
        var one = actuator(book.adding("lorry-21", PACK)).with(Figure.TEST_FINDS, money("80")).with(Figure.TEST_BLAMES, money("10"))
                .with(Figure.EYE_FINDS, money("50"));
        var costs = one.decision().customer().costs();
        assertEquals(java.util.Set.of(Option.values()), costs.keySet());
        assertEquals(217.98, costs.get(Option.TEST).doubleValue(), 0.02);
    }

    /** The actuator pays, so it comes first; the hook pump is looked at with the pack because it was left in once in five. */
    @Test
    void onlyWhatHasAReasonIsShown() throws Exception {
        var adding = book.adding("lorry-21", PACK);
        assertEquals(List.of(ACTUATOR, PLUG, FILTER, "renew-hook-pump"), adding.proposals().stream().map(Proposal::id).toList());
        assertTrue(actuator(adding).reasons().containsAll(List.of(Reason.NOTE, Reason.RUINS)));
        assertEquals(List.of(), book.adding("sweeper-3", "renew-sweeper-fan-bearings").proposals());
    }

    /** Without the note: its failure ruins the plates, and of the four jobs in which it was left in two failed. */
    @Test
    void theActuatorIsOfferedWithoutTheNotesWordForItBecauseItsFailureRuinsThePlates() throws Exception {
        var note = "notes/2025/note-2025-learning-fails-on-a-fresh-install-k7m3.xmi";
        var one = actuator(book.with(note, note, List.of(Map.entry("status=\"SEEN\"", "status=\"RULED_OUT\"")))
                .adding("lorry-21", PACK));
        assertEquals(List.of(), one.notes());
        assertTrue(one.reasons().contains(Reason.RUINS), one.reasons()::toString);
        assertTrue(one.reasons().contains(Reason.JOBS), "every job counts now that no note speaks for it: lorries 17 and 25 against 8 twice");
        assertEquals("2 of 4 of ours", one.known().words());
    }

    /** 5 min at 84 = 7.00 and 2.10: 9.10, with tax 11.01. Alone 1.2 h = 72 min, 100.80 and 2.10: 121.97 + 2.54 with tax. */
    @Test
    void whereNoProcedureIsWrittenTheNotesFiguresDo() throws Exception {
        var one = book.adding("lorry-21", PACK).proposal(PLUG).orElseThrow();
        assertEquals(Proposal.Basis.NOTE, one.basis());
        assertEquals(money("11.01"), one.assumptions().value(Figure.EXTRA));
        assertEquals(money("124.51"), one.assumptions().customer().apartLater());
        assertEquals("2 of about 25 of ours", one.known().words());
    }

    /**
     * No accesses are written down for the van, so two whole jobs of 140 min share nothing in a plan. The note's 10 min at 84
     * are 14.00 without tax; the parts are the plans' own.
     */
    @Test
    void whereNoAccessesAreWrittenDownTheNotesMinutesGoBeforeASecondWholeJob() throws Exception {
        var adding = van("10 min\"\n      alone=\"2 h").adding("van-04", VALVE);
        var one = adding.proposal("renew-van-odd").orElseThrow();
        assertEquals(List.of(Proposal.Basis.NOTE, 10L, 120L), List.of(one.basis(), one.extra(), one.apart()));
        var goods = one.assumptions().value(Figure.PARTS).add(one.assumptions().value(Figure.SUPPLIES));
        assertTrue(one.assumptions().value(Figure.EXTRA).compareTo(goods.add(money("17.00"))) < 0, one.assumptions()::toString);
        assertEquals(money("203.28"), one.assumptions().value(Figure.LABOUR), "120 min at 84, with 21 %");
        assertTrue(one.assumptions().find(Figure.EXTRA).orElseThrow().from().contains("no accesses"));
    }

    @Test
    void withoutAMinuteForDoingItAloneItsWholeJobStands() throws Exception {
        var one = van("10 min").adding("van-04", VALVE).proposal("renew-van-odd").orElseThrow();
        assertEquals(10, one.extra());
        assertTrue(one.apart() >= 140, "140 min and what comes with it: " + one.apart());
        assertEquals("its own plan from the closed machine", one.assumptions().find(Figure.LABOUR).orElseThrow().from());
    }

    /** A second procedure of the van, and a note that says it can be done with the first. */
    private AddingBook van(String minutes) throws Exception {
        return book.with("procedures/" + VALVE + ".xmi", "procedures/renew-van-odd.xmi", List.of(
                Map.entry(VALVE, "renew-van-odd"), Map.entry("Renew the exhaust gas recirculation valve", "Renew something odd")))
                .with(FILTER_NOTE, "notes/2026/note-2026-van-aaaa.xmi", List.of(
                        Map.entry("note-2026-filter-black-after-burnt-pack-g8mq", "note-2026-van-aaaa"),
                        Map.entry(FILTER, "renew-van-odd"), Map.entry(PACK, VALVE), Map.entry("lorry-14", "van-04"),
                        Map.entry("dravholm-hl26", "kestrow-v3"), Map.entry("extra=\"45 min\"\n      alone=\"2.5 h",
                                "extra=\"" + minutes)));
    }

    @Test
    void itStopsBetweenTwoIdeasOnceNobodyWaitsForIt() throws Exception {
        var request = book.request(PACK, List.of(), List.of());
        var monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        assertThrows(OperationCanceledException.class, () -> book.adding(request, OptionalInt.empty(), monitor));
    }

    /** A procedure that needs the arm up and the columns at once cannot be planned; a note still says what to add to it. */
    @Test
    void whereNoPlanCanBeMadeNotesAloneSpeak() throws Exception {
        var adding = odd().with(FILTER_NOTE, "notes/2026/note-2026-odd-aaaa.xmi", List.of(Map.entry(
                "note-2026-filter-black-after-burnt-pack-g8mq", "note-2026-odd-aaaa"), Map.entry(PACK, "renew-odd")))
                .adding("lorry-21", "renew-odd");
        assertTrue(adding.plan().isEmpty());
        assertTrue(adding.remarks().get(0).startsWith("No plan can be made, so only what notes give is shown"));
        var one = adding.proposal(FILTER).orElseThrow();
        assertEquals(Proposal.Basis.NOTE, one.basis());
        assertEquals(45, one.extra());
        assertEquals(150, one.apart());
    }

    @Test
    void whereNeitherPlanNorNoteSpeaksItIsAnError() throws Exception {
        odd();
        assertThrows(PlanException.class, () -> book.adding("lorry-21", "renew-odd"));
    }

    private AddingBook odd() throws Exception {
        return book.with(FILTER_FILE, "procedures/renew-odd.xmi", List.of(Map.entry(FILTER, "renew-odd"), Map.entry("<needs>",
                "<needs>\n      <anyOf\n          href=\"../machines/dravholm-hl26.xmi#on-column-lifts\"/>\n    </needs>\n    <needs>")));
    }

    /** Two that need the arm up: raising and lowering it, 25 min at 98 with tax, is paid once. */
    @Test
    void twoThatShareAnOpeningPayForItOnce() throws Exception {
        var adding = book.with(FILTER_FILE, "procedures/renew-pto-strainer.xmi", List.of(Map.entry(FILTER, "renew-pto-strainer")))
                .with(FILTER_NOTE, "notes/2026/note-2026-strainer-aaaa.xmi", List.of(Map.entry(
                        "note-2026-filter-black-after-burnt-pack-g8mq", "note-2026-strainer-aaaa"), Map.entry(FILTER, "renew-pto-strainer")))
                .adding("lorry-21", PACK);
        var pair = adding.pairs().get(0);
        assertEquals(List.of(FILTER, "renew-pto-strainer"), List.of(pair.first(), pair.second()));
        assertEquals(List.of("Hook arm raised and propped"), pair.openings().stream().map(it -> it.substring(0, 27)).toList());
        var once = adding.proposal(FILTER).orElseThrow().openings().get("hook-arm-raised");
        assertEquals(0, pair.extraEach().subtract(pair.extraBoth()).subtract(once).abs().compareTo(money("0.03")) <= 0 ? 0 : 1,
                () -> pair + " saves " + once);
    }

    /**
     * Each worth more than its own price but less than with the opening: together they pay for it. The actuator, which pays by
     * itself since lorry 25, is said never to come back.
     */
    @Test
    void twoThatDoNotPayAloneMayPayTogether() throws Exception {
        var adding = book.with(FILTER_FILE, "procedures/renew-pto-strainer.xmi", List.of(Map.entry(FILTER, "renew-pto-strainer")))
                .with(FILTER_NOTE, "notes/2026/note-2026-strainer-aaaa.xmi", List.of(Map.entry(
                        "note-2026-filter-black-after-burnt-pack-g8mq", "note-2026-strainer-aaaa"), Map.entry(FILTER, "renew-pto-strainer")))
                .adding("lorry-21", PACK);
        var changed = adding.change(ACTUATOR, it -> it.with(Figure.COMES_BACK, money("0")));
        for (var id : List.of(FILTER, "renew-pto-strainer")) {
            changed = changed.change(id, it -> it.with(Figure.COMES_BACK, money("40")));
            assertFalse(changed.proposal(id).orElseThrow().decision().customer().pays(), id);
        }
        assertEquals(List.of(FILTER, "renew-pto-strainer"), changed.together().orElseThrow().chosen());
    }

    @Test
    void keepingIsFromTheUnitsPageOrAsSaid() throws Exception {
        assertEquals("2029-12-31", book.adding("lorry-17", PACK).keptUntil().orElseThrow().toString());
        assertEquals("2028-11-25", book.adding("lorry-17", PACK, OptionalInt.of(2)).keptUntil().orElseThrow().toString());
        assertEquals(Optional.empty(), book.adding("dravholm-hl26", PACK).keptUntil());
    }

    /** From the open unit, pack done: the actuator is still there to be added, for the same minutes. */
    @Test
    void fromWhereTheMachineStandsItIsStillOffered() throws Exception {
        var one = actuator(book.adding(book.request(PACK, List.of("pto-unit-opened"), List.of("save-pto-values")), OptionalInt.empty()));
        assertEquals(25, one.extra());
        assertFalse(one.canOrder(), "the strip has begun");
    }

    /**
     * Lorry 21: 118240 − 61700 km in 1203 days, 47.00 a day; 51 days later 120637 km, never renewed. Two years are 730.5 days,
     * 34333 km. Shape 2, scale 200000 km: (120637/200000)² = 0.36384, (154970/200000)² = 0.60041; 1 − exp(−0.23657) = 0.2107.
     */
    @Test
    void lifeDataSayHowOftenWithTheUnitsOwnMeter() throws Exception {
        var one = lived("parts/pto-pack-filter.xmi", "200000 km").adding("lorry-21", PACK, OptionalInt.of(2)).proposal(FILTER).orElseThrow();
        assertEquals(0.2107, one.known().findings().comeback().chance(), 0.0001);
        assertEquals("about 1 in 5 by its life data", one.known().words());
        assertTrue(one.reasons().contains(Reason.LIFE), one.reasons()::toString);
    }

    @Test
    void lifeDataInHoursSayNothingWhereOnlyKilometresAreRead() throws Exception {
        var one = lived("parts/pto-pack-filter.xmi", "9000 h").adding("lorry-21", PACK, OptionalInt.of(2)).proposal(FILTER).orElseThrow();
        assertEquals("1 of about 12 of ours", one.known().words());
    }

    private AddingBook lived(String part, String scale) throws Exception {
        return book.with(part, part, List.of(Map.entry("  <applicability>", "  <life\n      shape=\"2\"\n      scale=\"" + scale
                + "\"/>\n  <applicability>")));
    }

    @Test
    void whatCameBackInTheSameChainIsNamedEvenIfNobodyWroteHowItIsRenewed() throws Exception {
        var job = "job-2026-clutch-pack-and-actuator-lorry-14-h6r2";
        var remarks = book.with("jobs/2026/" + job + ".xmi", "jobs/2026/job-2026-lever-aaaa.xmi", List.of(Map.entry(job,
                "job-2026-lever-aaaa"), Map.entry("  <cause\n", "  <comebackOf\n      href=\"" + job + ".xmi#" + job + "\"/>\n  <failed\n"
                + "      href=\"../../machines/dravholm-hl26.xmi#pto-engagement-lever\"/>\n  <cause\n")))
                .adding("lorry-21", PACK).remarks();
        assertEquals(1, remarks.size(), remarks::toString);
        assertTrue(remarks.get(0).startsWith("'Engagement lever' brought a unit back before"), remarks::toString);
    }
}
