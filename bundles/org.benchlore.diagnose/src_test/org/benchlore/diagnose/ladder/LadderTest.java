// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.ladder;

import static org.benchlore.diagnose.SmallShop.cause;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.diagnose.Assessment;
import org.benchlore.diagnose.FunctionChain;
import org.benchlore.diagnose.HoistShop;
import org.benchlore.diagnose.Named;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ladder line by line, from the job's own record and from the procedure where there is none. */
class LadderTest {

    @TempDir
    Path folder;
    private HoistShop hoist;

    @BeforeEach
    void make() throws Exception {
        hoist = new HoistShop(folder);
    }

    private static List<String> lines(Assessment answer, Rung.Kind kind) {
        return answer.ladder().orElseThrow().rungs().get(kind.ordinal()).items().stream()
                .map(item -> item.state() + " " + item.text() + ": " + item.detail()).toList();
    }

    @Test
    void conditionsAreReadAsTheyWereMeasuredLast() throws Exception {
        hoist.job("2 mm", "PASS");
        assertEquals(List.of("BAD Voltage: measured 22 V, should be 24 V to 28 V",
                "OPEN m-bare: not recorded, should be no limits recorded", "OPEN Arm down.: It swings.", "OPEN No code.: "),
                lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.CONDITIONS));
    }

    /** A record in which the work was done and nobody wrote of the teach-in that belongs after it. */
    private List<String> conditions(String more) throws Exception {
        hoist.shop().put("jobs/2026/job-2026-drive.xmi", "<book:JobRecord %s id=\"job-2026-drive\" formatVersion=\"1\" title=\"Drive\""
                + " opened=\"2026-03-01\"><unit href=\"../../units/winch-1.xmi#winch-1\"/><rounds id=\"round-1\" kind=\"STRIP\"><done>"
                + "<procedure href=\"../../procedures/renew-drive.xmi#renew-drive\"/></done>" + more + "</rounds></book:JobRecord>");
        return lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.CONDITIONS);
    }

    @Test
    void aTeachInThatNobodyRecordedComesFirst() throws Exception {
        assertEquals("OPEN Teach it in: not recorded as done: do it to its end before anything else is suspected", conditions("").get(0));
        assertEquals("Teach it in", hoist.after("winch-1", "renew-drive").ladder().orElseThrow().next().orElseThrow().text());
        assertEquals("Drive, 2026-03-01", hoist.after("winch-1", "renew-drive").ladder().orElseThrow().job().orElseThrow().title());
        assertEquals("OPEN Voltage: not recorded, should be 24 V to 28 V", conditions(
                "<done><procedure href=\"../../procedures/learn.xmi#learn\"/></done>").get(0));
    }

    /** The band was renewed after the teach-in had failed; asked after that very work, it counts as new. */
    @Test
    void workDoneAfterTheFailureCountsWhereItIsTheWorkAskedAbout() throws Exception {
        hoist.job("0.5 mm", "FAIL");
        assertTrue(lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.OLD_PARTS).stream().anyMatch(line -> line.contains("Brake band")));
        assertTrue(lines(hoist.after("winch-1", "set-band"), Rung.Kind.OLD_PARTS).stream().noneMatch(line -> line.contains("Brake band")));
    }

    /** The gap was measured before the band was renewed; asked after that, it says nothing of the new band. */
    @Test
    void whatWasMeasuredBeforeAPartWasRenewedLapses() throws Exception {
        hoist.job("0.5 mm", "FAIL");
        assertTrue(hoist.after("winch-1", "renew-drive").toString().contains("Gap 0.5 mm"));
        assertTrue(!hoist.after("winch-1", "set-band").toString().contains("Gap 0.5 mm"));
    }

    @Test
    void whatWasDisturbedStandsByItsSortAndWhatWasDoneAfterwardsIsGood() throws Exception {
        hoist.job("2 mm", "PASS");
        assertEquals(List.of("OPEN Unplug the connector of the motor.: connector", "GOOD Bleed it: done, 12 min",
                "OPEN Fill it: not recorded", "OPEN Tighten the union.: air", "OPEN Mark the flange.: mark",
                "OPEN Put grease on the shaft. Mind the brake band.: grease"),
                lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.DISTURBED));
    }

    @Test
    void oldPartsStandByTheirChanceWithWhatWasLeftAndMeasured() throws Exception {
        hoist.job("0.5 mm", "FAIL");
        assertEquals(List.of("BAD Brake band: Band drags; left in place: Moved freely.; Gap 0.5 mm, Below 1 mm",
                "OPEN Gear: Gear dry", "OPEN Control unit: ", "OPEN Oil circuit of it: "),
                lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.OLD_PARTS).stream().sorted(
                        java.util.Comparator.comparing((String line) -> line.startsWith("BAD") ? 0 : line.contains("Gear") ? 1 : 2)
                                .thenComparing(line -> line)).toList());
        assertTrue(lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.OLD_PARTS).get(0).startsWith("BAD Brake band"));
    }

    @Test
    void anOldPartThatWasMeasuredGoodIsGood() throws Exception {
        hoist.job("2 mm", "PASS");
        assertTrue(lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.OLD_PARTS)
                .contains("GOOD Brake band: Band drags; left in place: Moved freely.; Gap 2 mm, Within"));
    }

    @Test
    void everyNewPartIsDoubtedByItsNumberAndByWhatTheOldOneLookedLike() throws Exception {
        hoist.job("2 mm", "PASS");
        assertEquals(List.of("OPEN New motor: fitted; the book lists this number",
                "OPEN Old motor: this number is superseded by New motor",
                "OPEN Odd part: fitted; the book lists this number for no component of this machine",
                "OPEN Motor: new: compare its number, measure it as if it were old; the old one: Black inside."),
                lines(hoist.after("winch-1", "renew-drive"), Rung.Kind.NEW_PARTS));
    }

    @Test
    void withoutARecordTheProcedureTellsWhatIsNew() throws Exception {
        assertEquals(List.of("OPEN Gear: new: compare its number, measure it as if it were old",
                "OPEN Motor: new: compare its number, measure it as if it were old"),
                lines(hoist.after("winch", "renew-drive"), Rung.Kind.NEW_PARTS));
        assertTrue(hoist.after("winch", "renew-drive").ladder().orElseThrow().job().isEmpty());
    }

    @Test
    void softwareStandsLastWithWhatWasFoundInnocent() throws Exception {
        hoist.shop().note("out", "", "status=\"RULED_OUT\"", "<component href=\"../../machines/winch.xmi#brain\"/>"
                + "<finding>Another one stopped as well.</finding>");
        hoist.shop().note("seen", "", "status=\"SEEN\"", "<component href=\"../../machines/winch.xmi#brain\"/>");
        hoist.shop().note("band", "band-drags", "status=\"RULED_OUT\"", "");
        assertEquals(List.of("OPEN Control unit: software and learned values: last of all: read its software state and what it has"
                + " learned", "OPEN Control unit looked like this, was not: out: Another one stopped as well."),
                lines(hoist.after("winch", "renew-drive"), Rung.Kind.SOFTWARE));
    }

    @Test
    void itAsksWhatKilledThePartsAndWhatTheyKilled() throws Exception {
        var killed = hoist.after("winch", "renew-drive").ladder().orElseThrow().killed();
        assertTrue(killed.contains("Motor weak may come from: Gear dry. If the old part looked like that, the new one goes the"
                + " same way."), killed.toString());
        assertTrue(killed.contains("Motor weak may come from: Gear dry."), killed.toString());
        assertTrue(killed.contains("Gear dry may have spoiled: Motor."), killed.toString());
        assertTrue(killed.contains("Gear dry may have spoiled: Motor weak."), killed.toString());
        assertEquals(killed.size(), killed.stream().distinct().count());
    }

    @Test
    void theNextThingIsWhatWasFoundWrongElseTheFirstThatIsOpen() throws Exception {
        assertEquals("Voltage", hoist.after("winch", "renew-drive").ladder().orElseThrow().next().orElseThrow().text());
        hoist.job("2 mm", "PASS");
        assertEquals(Item.State.BAD, hoist.after("winch-1", "renew-drive").ladder().orElseThrow().next().orElseThrow().state());
    }

    @ParameterizedTest
    @CsvSource({"0.5 mm, FAIL, Below 1 mm", "4 mm, FAIL, Above 3 mm", "2 mm, PASS, Within"})
    void aRecordedValueAnswersItsCheckBySide(String gap, String verdict, String said) throws Exception {
        hoist.job(gap, verdict);
        var steps = hoist.after("winch-1", "renew-drive").path().steps();
        assertEquals(List.of("Gap " + gap + ", " + said), steps.stream().map(step -> step.result()).toList());
        assertTrue(steps.get(0).recorded());
    }

    @Test
    void aValueWithoutAVerdictAnswersNothing() throws Exception {
        hoist.job("0.5 mm", "NOT_RECORDED");
        assertEquals(List.of(), hoist.after("winch-1", "renew-drive").path().steps());
    }

    @Test
    void theRecordIsToldApartFromWhatWasCheckedNow() throws Exception {
        hoist.job("0.5 mm", "FAIL");
        var path = hoist.after("winch-1", "renew-drive").path();
        assertEquals("Measure the band: Gap 0.5 mm, Below 1 mm (from the job record)\nPoints to: Band drags", path.text());
        assertEquals("", path.added());
        assertTrue(path.isFound());
        assertEquals("job-2026-drive", path.job().orElseThrow().id());
        assertEquals("renew-drive", path.during().orElseThrow().id());
        assertEquals("band", path.component().orElseThrow().id());
        var again = hoist.after("winch-1", "renew-drive", "step-gap=gap-within").path();
        assertEquals("Measure the band: Within\nPoints to: " + again.leading().orElseThrow().title(), again.added());
        assertFalse(again.isFound(), "nothing points at what leads");
    }

    @Test
    void aCheckThatPointsAtAnUnlikelyCauseFindsNothing() throws Exception {
        assertFalse(hoist.after("winch", null).path().isFound());
        var path = hoist.after("winch", null, "step-gap=gap-above").path();
        assertEquals("gear-dry", path.leading().orElseThrow().address().id());
        assertTrue(path.isFound());
        assertTrue(path.job().isEmpty());
    }

    @Test
    void ofTheChainTheWorkJustDoneAndEarlierJobsOfTheUnitAreTold() throws Exception {
        hoist.shop().job("a-lamp", "", "opened=\"2025-02-01\"", "<rounds id=\"round-1\"><done>"
                + "<renewed href=\"../../machines/winch.xmi#band\"/></done></rounds>");
        hoist.shop().job("b-band", "", "opened=\"2025-03-01\"", "<rounds id=\"round-1\"><done>"
                + "<renewed href=\"../../machines/winch.xmi#band\"/></done></rounds>");
        hoist.shop().job("undated", "", "", "<rounds id=\"round-1\"><done><renewed href=\"../../machines/winch.xmi#brain\"/></done></rounds>");
        var chain = hoist.after("winch-1", "renew-drive").chain().orElseThrow();
        assertEquals("The hoist lifts", chain.function().title());
        assertEquals("Motor, gear, brake.", chain.text());
        assertEquals(List.of("Motor true Renew the drive", "Gear true Renew the drive", "Brake band true 2025-03-01: b-band",
                "Oil circuit of it false ", "Control unit false "), chain.members().stream().map(LadderTest::told).toList());
        assertEquals(List.of("Motor false ", "Gear false ", "Brake band false ", "Oil circuit of it false ", "Control unit false "),
                hoist.after("winch", null).chain().orElseThrow().members().stream().map(LadderTest::told).toList(),
                "no unit, no jobs");
    }

    private static String told(FunctionChain.Member member) {
        return member.component().title() + " " + member.renewed() + " " + member.when();
    }

    @Test
    void theJobInHandIsNoEvidenceForItself() throws Exception {
        hoist.job("2 mm", "PASS");
        var chain = hoist.after("winch-1", "renew-drive").chain().orElseThrow();
        assertEquals("Brake band false ", told(chain.members().get(2)), "what came after the teach-in failed is not known yet");
    }

    private List<String> cures(String cause) throws Exception {
        return cause(hoist.after("winch", null), cause).cures().stream().map(Named::title).toList();
    }

    @Test
    void whatIsDoneAboutACauseStandsByNearness() throws Exception {
        assertEquals(List.of("Renew the gear", "Renew the drive"), cures("gear-dry"));
        assertEquals(List.of("Renew the drive"), cures("motor-weak"));
        assertEquals(List.of("Set the band"), cures("band-drags"), "what is renewed if found and a test cure nothing");
    }

    @Test
    void aWithdrawnProcedureAndOneForAnotherMachineCureNothing() throws Exception {
        hoist.procedure("set-band", "kind=\"ADJUST\" status=\"WITHDRAWN\" title=\"Set the band\"",
                "<component href=\"../machines/winch.xmi#band\"/>", "", "");
        assertEquals(List.of(), cures("band-drags"));
        hoist.procedure("teach-band", "kind=\"TEACH_IN\" title=\"Teach the band\"", "<component href=\"../machines/winch.xmi#band\"/>",
                "", "");
        assertEquals(List.of("Teach the band"), cures("band-drags"));
    }

    @Test
    void noMoreThanThreeCuresAreNamed() throws Exception {
        for (var id : List.of("d", "c", "b", "a")) {
            hoist.procedure("set-" + id, "kind=\"ADJUST\" title=\"" + id + "\"", "<component href=\"../machines/winch.xmi#band\"/>", "",
                    "");
        }
        assertEquals(List.of("Set the band", "a", "b"), cures("band-drags"));
    }

    @Test
    void circumstancesOfTheWorkAreSaid() throws Exception {
        var answer = hoist.after("winch", "renew-drive");
        assertTrue(cause(answer, "motor-weak").moves().stream().anyMatch(move -> !move.isUp()
                && move.by().equals("the part is new: renewed by 'Renew the drive'")));
        assertTrue(cause(answer, "band-drags").moves().stream().anyMatch(move -> move.isUp()
                && move.by().equals("the work disturbed it: Put grease on the shaft. Mind the brake band.")));
        hoist.procedure("renew-drive", "kind=\"RENEW\" title=\"Renew the drive\"", "", "", "<parts id=\"use-a\">"
                + "<part href=\"../parts/p-motor.xmi#p-motor\"/></parts>");
        assertTrue(cause(hoist.after("winch", "renew-drive"), "band-drags").moves().stream()
                .anyMatch(move -> move.by().equals("an old part left in a chain with new ones")));
    }
}
