// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.plan.QuayCrane.access;
import static org.benchlore.plan.QuayCrane.to;
import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.Solution;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan says besides: exactly these sentences and no others. */
class RemarksTest {

    private static final String STANDS_OPEN = "The machine stands open: before the first line somebody looks that all of it is as it is"
            + " taken to be, supports and stands, pressure off, switched off and locked.";
    private static final String HAND_BACK = "Hand-back is worked out for Monday to Friday, eight hours from 8:00, work from the next"
            + " working day and only when the missing parts are there; what nobody attends to runs on through the night.";

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void oneCoverWithSteps() throws Exception {
        crane = new QuayCrane(folder).crane("<accesses id=\"hood\" title=\"Hood\">" + work("strip") + work("refit") + "</accesses>");
    }

    private static String work(String tag) {
        return "<" + tag + " id=\"" + tag + "-hood\"><steps id=\"step-" + tag + "\"><text>Do it.</text></steps></" + tag + ">";
    }

    @Test
    void whereAllIsWrittenDownOnlyTheHandBackIsExplained() throws Exception {
        crane.work("renew", "RENEW", "hood", "", "");
        assertEquals(List.of(HAND_BACK), crane.plan("renew").remarks());
    }

    @Test
    void aPlanFromTheHoursOfTheWholeJobSaysWhatIsMissing() throws Exception {
        crane.procedure("a", "RENEW", "wholeJobUsual=\"2 h\"", "").procedure("b", "RENEW", "wholeJobBad=\"2 h\"",
                way("way-b", "", "", ""));
        assertEquals(List.of("'A' is planned from the hours of the whole job, strip and refit in them: its own time is not written"
                + " down. What shares a strip is not seen.", "'B' is planned from the hours of the whole job, strip and refit in"
                + " them: its own time is not written down. What shares a strip is not seen.",
                "No steps are written down for 'A'.", "No steps are written down for 'B'.", HAND_BACK), crane.plan("a", "b").remarks());
        crane.crane("");
        assertTrue(crane.plan("a").remarks().get(0).contains("no accesses are written down for this machine"));
    }

    @Test
    void aTimeOfItsOwnComesBeforeTheHoursOfTheWholeJob() throws Exception {
        crane.procedure("a", "RENEW", "wholeJobUsual=\"2 h\"", way("way-a", "", "minutesBad=\"20 min\"",
                "<steps id=\"s\"><text>Do it.</text></steps>"));
        assertEquals(List.of(HAND_BACK), crane.plan("a").remarks());
    }

    @Test
    void whatHasNoStepsIsNamedOnce() throws Exception {
        crane.crane(access("hood", "", "", "", "") + access("bare", "hood", "", "", "").replaceAll("<(strip|refit).*?/>", ""));
        crane.work("renew", "RENEW", "bare", "", "");
        assertEquals(List.of("No steps are written down for 'Strip hood'.", "No steps are written down for 'Open: Bare'.",
                "No steps are written down for 'Close: Bare'.", "No steps are written down for 'Refit hood'.", HAND_BACK),
                crane.plan("renew").remarks());
    }

    @Test
    void statesThatExcludeEachOtherAreNamed() throws Exception {
        crane.work("renew", "RENEW", "hood", "HOT RAISED COLD", "");
        assertEquals(List.of("'Renew' asks for hot and cold at once: correct it before work.", HAND_BACK), crane.plan("renew").remarks());
    }

    @Test
    void whatBelongsBeforeTheStripIsRemarkedOnlyOnceTheStripHasBegun() throws Exception {
        crane.work("save", "TEACH_IN", "", "", "").work("renew", "RENEW", "hood", "", to("before", "save"));
        assertEquals(List.of(HAND_BACK), crane.plan("renew").remarks());
        assertEquals(List.of(STANDS_OPEN, "'Save' belongs before the strip, which has begun: if the job record shows that it was done, tick it as"
                + " done, on the command line --done save.", HAND_BACK), crane.plan(List.of("renew"), List.of("hood"), List.of()).remarks());
    }

    @Test
    void assumedTimesOfProofsAreSaid() throws Exception {
        crane.work("renew", "RENEW", "hood", "", "<verifications id=\"v-run\" kind=\"TRIAL_RUN\" distance=\"20 km\"/>"
                + "<verifications id=\"v-cold\" kind=\"COLD_START\" starts=\"2\" soak=\"8 h\"/>"
                + "<verifications id=\"v-codes\" kind=\"CODES_READ_AGAIN\"/>");
        assertEquals(List.of("A trial run without a time is taken at 40 km/h.", "A cold start is taken at 10 min of somebody's time.",
                HAND_BACK), crane.plan("renew").remarks());
        crane.work("renew", "RENEW", "hood", "", "<verifications id=\"v-run\" kind=\"TRIAL_RUN\" distance=\"20 km\" duration=\"40 min\"/>"
                + "<verifications id=\"v-cold\" kind=\"COLD_START\" duration=\"15 min\"/>"
                + "<verifications id=\"v-hold\" kind=\"PRESSURE_HOLD\"/>");
        assertEquals(List.of(HAND_BACK), crane.plan("renew").remarks());
    }

    @Test
    void aSearchThatWasCutOffSaysByHowMuchAPlanCouldBeCheaper() throws Exception {
        try (var library = crane.open()) {
            var request = new PlanRequest("crane-1", List.of(), List.of(), List.of(), QuayCrane.WEDNESDAY, Optional.empty());
            var inputs = new PlanInputs(new PlanBook(library, "crane-1"), request, new WorkFacts(library,
                    new LabourRates(Optional.empty(), QuayCrane.WEDNESDAY)));
            var problem = new PlanProblem(List.of(), List.of(), List.of(), List.of(), List.of());
            var cut = new Solution(List.of(), new TreeMap<>(), List.of(), 10_000, 8_765, 1);
            assertEquals(List.of("The search was cut off: a cheaper plan could be cheaper by at most 12.35.", HAND_BACK),
                    new PlanRemarks(problem, cut, inputs).of(List.of()));
        }
    }

    @Test
    void whyTwoMustNotBeOpenTogetherIsSaidOnlyWhereBothAreOpened() throws Exception {
        crane.crane(access("hood", "", "", "", "<notWithWhy>They strike.</notWithWhy><notWith href=\"#door\"/>")
                + access("door", "", "", "", "") + access("rear", "", "", "", ""));
        crane.work("at-hood", "RENEW", "hood", "", "").work("at-door", "RENEW", "door", "", "");
        assertTrue(crane.plan("at-door", "at-hood").remarks().contains("'Hood': They strike."));
        assertFalse(crane.plan("at-hood").remarks().contains("'Hood': They strike."));
        assertFalse(crane.plan("at-door").remarks().contains("'Hood': They strike."));
        assertTrue(crane.plan(List.of("at-door"), List.of("hood"), List.of()).remarks().contains("'Hood': They strike."),
                "the hood is open now and is closed for the door");
    }

    private static String oil(String way) {
        return "<supplies id=\"use-" + way + "\" quantity=\"3 l\" way=\"" + way + "\"><supply href=\"../supplies/oil.xmi#oil\"/></supplies>";
    }

    private static String steps(String body) {
        return way("way", "", "", body + "<steps id=\"s\"><text>Do it.</text></steps>");
    }

    @Test
    void whatIsFilledAndNotLetOutIsRemarked() throws Exception {
        crane.put("supplies/oil.xmi", "Supply", "id=\"oil\" title=\"Oil\"", "");
        crane.crane("<accesses id=\"sump\" title=\"Sump\"><afterClosing href=\"../procedures/fill.xmi#fill\"/>" + work("strip")
                + work("refit") + "</accesses>").procedure("fill", "SERVICE", "", steps(oil("IN")));
        assertEquals(List.of("'Fill' fills what this plan does not let out: only the level is looked at, or it is left out.", HAND_BACK),
                crane.plan("fill").remarks());
        crane.procedure("empty", "SERVICE", "", steps(oil("OUT")));
        assertEquals(List.of(HAND_BACK), crane.plan("fill", "empty").remarks());
    }

    /** Of two whole jobs nobody can say what they share, except whoever has done both at once and written it down. */
    @Test
    void whatANoteKnowsOfTwoWholeJobsIsSaid() throws Exception {
        crane.procedure("hose", "RENEW", "wholeJobUsual=\"2 h\"", "").procedure("pump", "RENEW", "wholeJobUsual=\"3 h\"", "");
        crane.put("notes/2026/note-2026-hose.xmi", "FieldNote", "id=\"note-2026-hose\" title=\"With the pump out\"",
                "<machine href=\"../../machines/crane.xmi#crane\"/><addWhileDoing id=\"add\" extra=\"10 min\">"
                        + "<work href=\"../../procedures/hose.xmi#hose\"/><whileDoing href=\"../../procedures/pump.xmi#pump\"/></addWhileDoing>");
        assertTrue(crane.plan("hose", "pump").remarks().contains("'With the pump out' says that 'Hose' takes 10 min more with the other"
                + " work open; here it has its whole 120 min."), crane.plan("hose", "pump").remarks()::toString);
        assertEquals(List.of(), crane.plan("hose").remarks().stream().filter(one -> one.contains("With the pump out")).toList());
    }

    @Test
    void whatRanIsHotAndUnderPressure() throws Exception {
        crane.work("a-test", "TEST", "", "RUNNING HOT", "").work("renew", "RENEW", "", "COLD STOPPED", to("before", "a-test"));
        assertEquals(List.of("'Renew' asks for a cold machine after 'A test' has run it: the time to cool down is not counted."),
                crane.plan("renew").remarks().stream().filter(one -> one.contains("cold")).toList());
    }
}
