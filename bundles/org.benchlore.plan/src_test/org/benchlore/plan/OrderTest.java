// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.plan.QuayCrane.access;
import static org.benchlore.plan.QuayCrane.changes;
import static org.benchlore.plan.QuayCrane.order;
import static org.benchlore.plan.QuayCrane.to;
import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In what order things stand in a plan; each expected order is argued by hand. Common practice, no source. */
class OrderTest {

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void threeCoversOneBehindTheOther() throws Exception {
        crane = new QuayCrane(folder).crane(access("hood", "", "", "", "") + access("lid", "hood", "", "", "")
                + access("core", "lid", "", "", ""));
    }

    @Test
    void workIsDoneAsSoonAsItIsWithinReachAndWhatWasOpenedIsClosedInReverse() throws Exception {
        crane.work("at-core", "RENEW", "core", "", "").work("zz-at-hood", "RENEW", "hood", "", "");
        assertEquals(List.of("+hood", "zz-at-hood", "+lid", "+core", "at-core", "-core", "-lid", "-hood"),
                order(crane.plan("at-core", "zz-at-hood")));
    }

    @Test
    void ofTwoThingsWithinReachTheOneThatChangesLessComesFirst() throws Exception {
        crane.crane(access("hood", "", "states=\"COLD RAISED\"", "", ""));
        crane.work("a-hot", "TEST", "hood", "HOT", "").work("b-cold", "TEST", "hood", "COLD", "");
        var plan = crane.plan("a-hot", "b-cold");
        assertEquals(List.of("+hood", "b-cold", "a-hot", "-hood"), order(plan));
        assertEquals(List.of("hood [COLD, RAISED]", "a-hot [HOT]"), changes(plan));
    }

    @Test
    void theFirstItemNamesEveryStateItAsksForInTheOrderOfTheBook() throws Exception {
        crane.work("only", "RENEW", "", "RAISED COLD", "");
        assertEquals(List.of("only [COLD, RAISED]"), changes(crane.plan("only")));
    }

    @Test
    void whatNeedsTheEngineComesBeforeAnythingIsTakenApart() throws Exception {
        crane.work("at-lid", "RENEW", "lid", "STOPPED", "").work("zz-run-at-hood", "TEST", "hood", "HOT RUNNING", "");
        assertEquals(List.of("+hood", "zz-run-at-hood", "+lid", "at-lid", "-lid", "-hood"),
                order(crane.plan("at-lid", "zz-run-at-hood")));
    }

    /** A test with the engine running undoes what was made safe before the strip: a line of its own makes it safe again. */
    @Test
    void whatRelievedThePressureIsDoneAgainAfterTheMachineHasRun() throws Exception {
        crane.work("relieve", "SERVICE", "", "STOPPED PRESSURE_RELIEVED", "")
                .work("a-test", "TEST", "", "RUNNING HOT", to("before", "relieve"))
                .work("renew", "RENEW", "hood", "STOPPED PRESSURE_RELIEVED", to("before", "relieve"));
        var plan = crane.plan("a-test", "renew");
        assertEquals(List.of("*relieve", "a-test", "+hood", "*relieve again", "renew", "-hood"), order(plan));
        assertTrue(plan.remarks().contains("'Relieve' is done again, because the machine has run since."), plan.remarks().toString());
        assertEquals(List.of(), plan.remarks().stream().filter(one -> one.contains("has run the machine")).toList());
    }

    /** A leak is looked for from the pit before the crane is driven off it, although the cover is closed by then. */
    @Test
    void whatNeedsAnAccessAfterClosingIsDoneWhileThatIsStillOpen() throws Exception {
        crane.crane(access("pit", "", "states=\"RUNNING\"", "states=\"RUNNING\"", "")
                + access("cover", "pit", "", "", to("afterClosing", "look")));
        crane.work("look", "TEST", "pit", "", "").work("renew", "RENEW", "cover", "", "");
        var plan = crane.plan("renew");
        assertEquals(List.of("+pit", "+cover", "renew", "-cover", ")look", "-pit"), order(plan));
        assertEquals(List.of(), plan.remarks().stream().filter(one -> one.contains("with everything closed")).toList());
    }

    @Test
    void nothingIsDrivenWithWhatWasLiftedAndPropped() throws Exception {
        crane.crane(access("arm", "", "states=\"RUNNING\" qualifications=\"LIFTING\"", "", "") + access("pit", "", "states=\"RUNNING\"", "", ""));
        crane.work("renew", "RENEW", "arm pit", "", "");
        assertEquals(List.of("+pit", "+arm", "renew", "-arm", "-pit"), order(crane.plan("renew")));
    }

    @Test
    void whatMustComeBeforeIsDoneFirstThoughItIsAKindThatUsuallyComesLate() throws Exception {
        crane.work("save", "TEACH_IN", "", "", "").work("at-hood", "RENEW", "hood", "", to("before", "save"));
        assertEquals(List.of("*save", "+hood", "at-hood", "-hood"), order(crane.plan("at-hood")));
    }

    @Test
    void whatMustComeBeforeAndNeedsAnAccessIsDoneInsideFirst() throws Exception {
        crane.work("zz-look", "INSPECT", "hood", "", "").work("at-hood", "RENEW", "hood", "", to("before", "zz-look"));
        assertEquals(List.of("+hood", "*zz-look", "at-hood", "-hood"), order(crane.plan("at-hood")));
    }

    /** The line is opened for the motor, so the flow is measured before that, with no more open than the gauge needs. */
    @Test
    void whatNeedsTheEngineIsDoneBeforeMoreIsOpenedThanItNeeds() throws Exception {
        crane.crane(access("door", "", "", "", "") + access("a-line", "door", "states=\"PRESSURE_RELIEVED\"", "", "")
                + access("panel", "door", "", "", ""));
        crane.work("measure", "TEST", "panel", "RUNNING UNDER_PRESSURE", "").work("a-motor", "RENEW", "a-line", "", "");
        assertEquals(List.of("+door", "+panel", "measure", "+a-line", "a-motor", "-a-line", "-panel", "-door"),
                order(crane.plan("a-motor", "measure")));
    }

    @Test
    void whatMustComeBeforeIsDoneBeforeMoreIsOpenedThanItNeeds() throws Exception {
        crane.crane(access("door", "", "", "", "") + access("a-line", "door", "", "", "") + access("panel", "door", "", "", "")
                + access("core", "panel|a-line", "", "", ""));
        crane.work("look", "INSPECT", "panel", "", "").work("a-motor", "RENEW", "a-line", "", "")
                .work("in-core", "RENEW", "core", "", to("before", "look"));
        assertEquals(List.of("+door", "+panel", "*look", "+a-line", "a-motor", "+core", "in-core"),
                order(crane.plan("a-motor", "in-core")).subList(0, 7));
    }

    @Test
    void whatIsOpenedWithTheEngineRunningIsReachedFirst() throws Exception {
        crane.crane(access("door", "", "", "", "") + access("a-flap", "", "states=\"STOPPED\"", "", "") + access("arm-up", "door", "states=\"RUNNING\"",
                "", ""));
        crane.work("at-flap", "RENEW", "a-flap", "", "").work("under-arm", "RENEW", "arm-up", "", "");
        assertEquals(List.of("+door", "+arm-up", "under-arm", "+a-flap", "at-flap"), order(crane.plan("at-flap", "under-arm")).subList(0, 5));
    }

    @Test
    void withNothingToOpenTheEngineRunsBeforeWhatMustComeBefore() throws Exception {
        crane.work("relieve", "SERVICE", "", "STOPPED PRESSURE_RELIEVED", "").work("slew-and-look", "INSPECT", "", "RUNNING", "")
                .work("a-motor", "RENEW", "", "", to("before", "relieve"));
        assertEquals(List.of("slew-and-look", "*relieve", "a-motor"), order(crane.plan("a-motor", "slew-and-look")));
    }

    @Test
    void withNothingToOpenThingsStandByWhatMustComeBeforeThenByName() throws Exception {
        crane.work("a-teach", "TEACH_IN", "", "", to("before", "c-look")).work("b-adjust", "ADJUST", "", "", "")
                .work("c-look", "INSPECT", "", "", "");
        assertEquals(List.of("b-adjust", "c-look", "a-teach"), order(crane.plan("a-teach", "b-adjust", "c-look")));
    }

    @Test
    void withNothingToOpenTheOneThatChangesLessComesFirst() throws Exception {
        crane.work("a-look", "INSPECT", "", "COLD", "").work("b-hot", "TEST", "", "HOT", "").work("c-cold", "TEST", "", "COLD", "");
        assertEquals(List.of("a-look", "c-cold", "b-hot"), order(crane.plan("a-look", "b-hot", "c-cold")));
    }

    @Test
    void lookingComesBeforeTheStripAdjustingAndTeachingInAfterIt() throws Exception {
        crane.work("a-adjust", "ADJUST", "", "", "").work("a-teach", "TEACH_IN", "", "", "").work("z-look", "INSPECT", "", "", "")
                .work("at-hood", "RENEW", "hood", "", "");
        assertEquals(List.of("z-look", "+hood", "at-hood", "-hood", "a-adjust", "a-teach"),
                order(crane.plan("a-adjust", "a-teach", "at-hood", "z-look")));
    }

    @Test
    void whatWaitsForWorkInsideIsDoneAfterIt() throws Exception {
        crane.work("look", "INSPECT", "", "", to("before", "at-hood")).work("at-hood", "RENEW", "hood", "", "");
        assertEquals(List.of("+hood", "at-hood", "-hood", "look"), order(crane.plan("at-hood", "look")));
    }

    @Test
    void nothingRunsEmptySoItIsFilledAsSoonAsItIsClosed() throws Exception {
        crane.crane(access("hood", "", "", "states=\"RUNNING\"", "") + access("sump", "hood", "states=\"DRAINED\"", "",
                to("afterClosing", "fill")));
        crane.work("fill", "SERVICE", "", "", "").work("in-sump", "RENEW", "sump", "", "");
        var plan = crane.plan("in-sump");
        assertEquals(List.of("+hood", "+sump", "in-sump", "-sump", ")fill", "-hood"), order(plan));
        assertEquals(List.of("sump [DRAINED]", "-hood [FILLED, RUNNING]"), changes(plan));
    }

    /** Nobody drives off with a unit that was not bled and taught in; the leak test comes after. */
    @Test
    void whatIsBledAdjustedAndTaughtInComesBeforeItIsDrivenOut() throws Exception {
        crane.crane(access("pit", "", "states=\"RUNNING\"", "states=\"RUNNING\"", "") + access("unit-out", "pit", "", "", ""));
        crane.work("bleed", "SERVICE", "", "", "").work("teach", "TEACH_IN", "", "", "").work("leaks", "TEST", "", "", "")
                .work("renew", "RENEW", "unit-out", "", to("afterClosing", "teach", "leaks", "bleed"));
        assertEquals(List.of("+pit", "+unit-out", "renew", "-unit-out", ")bleed", ")teach", "-pit", ")leaks"), order(crane.plan("renew")));
    }

    @Test
    void whatWaitsForSomethingLaterOrNeedsSomethingOpenIsNotDoneBeforeItIsDrivenOut() throws Exception {
        crane.crane(access("pit", "", "states=\"RUNNING\"", "states=\"RUNNING\"", to("afterClosing", "set")) + access("lid", "", "", "", ""));
        crane.work("set", "ADJUST", "", "", "").work("grease", "SERVICE", "lid", "", "").work("teach", "TEACH_IN", "", "", to("before", "run"))
                .work("run", "TEST", "", "", "").work("renew", "RENEW", "pit", "", to("afterClosing", "grease", "teach"));
        assertEquals(List.of("+pit", "renew", "-pit", "+lid", ")grease", "-lid", ")set", ")run", ")teach"), order(crane.plan("renew")));
    }

    @Test
    void afterARunTheMachineIsNeitherColdNorWithoutPressure() throws Exception {
        crane.crane(access("hood", "", "states=\"COLD PRESSURE_RELIEVED\"", "", ""));
        crane.work("a-run", "TEST", "hood", "RUNNING", "").work("b-line", "RENEW", "hood", "STOPPED COLD PRESSURE_RELIEVED", "");
        assertEquals(List.of("hood [COLD, PRESSURE_RELIEVED]", "a-run [RUNNING]", "b-line [COLD, PRESSURE_RELIEVED, STOPPED]"),
                changes(crane.plan("a-run", "b-line")));
    }

    @Test
    void itIsNotFilledWhileWhatHoldsItIsOpenNorByWhatOnlyAdjusts() throws Exception {
        crane.crane(access("sump", "", "states=\"DRAINED\"", "", to("afterClosing", "fill", "set")));
        crane.work("fill", "SERVICE", "", "", "").work("set", "ADJUST", "", "", "").work("run-open", "TEST", "sump", "RUNNING", "");
        assertEquals(List.of("+sump", "run-open", "-sump", ")fill", ")set"), order(crane.plan("run-open")));
    }

    @Test
    void afterClosingItIsFilledThenAdjustedThenTaughtInThenTested() throws Exception {
        crane.work("d-fill", "SERVICE", "", "", "").work("c-adjust", "ADJUST", "", "", "").work("b-teach", "TEACH_IN", "", "", "")
                .work("a-test", "TEST", "", "", "")
                .work("at-hood", "RENEW", "hood", "", to("afterClosing", "a-test", "b-teach", "c-adjust", "d-fill"));
        assertEquals(List.of("+hood", "at-hood", "-hood", ")d-fill", ")c-adjust", ")b-teach", ")a-test"),
                order(crane.plan("at-hood")));
    }

    @Test
    void whatAsksForAnotherAfterItComesBeforeIt() throws Exception {
        crane.work("a-bleed", "SERVICE", "", "", "").work("b-fill", "SERVICE", "", "", to("afterClosing", "a-bleed"))
                .work("at-hood", "RENEW", "hood", "", to("afterClosing", "a-bleed", "b-fill"));
        assertEquals(List.of("+hood", "at-hood", "-hood", ")b-fill", ")a-bleed"), order(crane.plan("at-hood")));
    }

    @Test
    void whatOthersAskForComesAfterWhatNobodyAsksFor() throws Exception {
        crane.work("a-bleed", "SERVICE", "", "", "").work("b-fill", "SERVICE", "", "", to("afterClosing", "a-bleed"))
                .work("c-grease", "SERVICE", "", "", "")
                .work("at-hood", "RENEW", "hood", "", to("afterClosing", "b-fill", "c-grease"));
        assertEquals(List.of("+hood", "at-hood", "-hood", ")b-fill", ")c-grease", ")a-bleed"), order(crane.plan("at-hood")));
    }

    @Test
    void twoThatAskForEachOtherAfterClosingAreRefused() throws Exception {
        crane.work("a-bleed", "SERVICE", "", "", to("afterClosing", "b-fill")).work("b-fill", "SERVICE", "", "",
                to("afterClosing", "a-bleed")).work("at-hood", "RENEW", "hood", "", to("afterClosing", "a-bleed"));
        assertEquals("These ask for each other after closing: a-bleed, b-fill; take one 'after closing' or 'before' out"
                + " [a-bleed, b-fill]", crane.refused(List.of("at-hood"), List.of()));
    }

    @Test
    void twoThatMustComeBeforeEachOtherAreRefused() throws Exception {
        crane.work("a", "RENEW", "hood", "", to("before", "b")).work("b", "RENEW", "hood", "", to("before", "a"));
        assertEquals("These must come before each other: a, b; take one 'before' out [a, b]", crane.refused(List.of("a"), List.of()));
    }

    /** Nothing has a time or a rate, so every opening costs nothing; none is made that nobody needs. */
    @Test
    void nothingIsOpenedForNothingThoughItCostsNothing() throws Exception {
        crane.crane(access("hood", "", "", "", "") + access("door", "", "", "", "") + access("lid", "hood|door", "", "", ""));
        crane.work("renew", "RENEW", "lid", "", "");
        assertEquals(List.of("renew", "-lid", "-hood"), order(crane.plan(List.of("renew"), List.of("lid", "hood"), List.of())));
        assertEquals(4, crane.plan("renew").items().stream().filter(item -> item.part() != PlanItem.Part.WORK).count());
    }

    @Test
    void afterClosingTheOneThatChangesLessComesFirst() throws Exception {
        crane.work("a-test", "TEST", "", "HOT", "").work("b-test", "TEST", "", "COLD", "")
                .work("at-hood", "RENEW", "hood", "COLD", to("afterClosing", "a-test", "b-test"));
        assertEquals(List.of("+hood", "at-hood", "-hood", ")b-test", ")a-test"), order(crane.plan("at-hood")));
    }

    @Test
    void whatMustComeBeforeSomethingDoneAfterClosingIsDoneAfterClosingAsWell() throws Exception {
        crane.work("b-warm", "TEST", "", "", "").work("a-teach", "TEACH_IN", "", "", to("before", "b-warm"))
                .work("at-hood", "RENEW", "hood", "", to("afterClosing", "a-teach"));
        assertEquals(List.of("+hood", "at-hood", "-hood", ")b-warm", ")a-teach"), order(crane.plan("at-hood")));
    }

    @Test
    void whatCannotBeDoneClosedIsOpenedForAgainAndClosed() throws Exception {
        crane.work("grease", "SERVICE", "lid", "", "").work("at-hood", "RENEW", "hood", "", to("afterClosing", "grease"));
        var plan = crane.plan("at-hood");
        assertEquals(List.of("+hood", "at-hood", "-hood", "+hood again", "+lid", ")grease", "-lid", "-hood again"), order(plan));
        assertTrue(plan.remarks().contains("'Grease' cannot be done with everything closed: what it needs is opened for it once"
                + " more; that was not weighed against other ways."), plan.remarks()::toString);
    }

    @Test
    void whatIsOpenAtTheStartIsClosedInTheOrderAPlanWouldHaveOpenedIt() throws Exception {
        crane.crane(access("door", "", "", "", "") + access("flap", "", "states=\"HOT\"", "", "")
                + access("core", "door flap", "states=\"COLD\"", "", ""));
        crane.work("in-core", "RENEW", "core", "", "");
        var plan = crane.plan(List.of("in-core"), List.of("core", "door", "flap"), List.of());
        assertEquals(List.of("in-core", "-core", "-flap", "-door"), order(plan));
    }

    @Test
    void theMachineIsTakenAsTheStripLeftIt() throws Exception {
        crane.crane(access("sump", "", "states=\"DRAINED\"", "", ""));
        crane.work("look", "INSPECT", "sump", "COLD", "").work("run", "TEST", "sump", "RUNNING", "");
        var plan = crane.plan(List.of("look", "run"), List.of("sump"), List.of());
        assertEquals(List.of("run", "look", "-sump"), order(plan));
        assertEquals(List.of("run [RUNNING]", "look [COLD]"), changes(plan), "the first names what its page asks for");
        var looked = crane.plan(List.of("look"), List.of("sump"), List.of());
        assertEquals(List.of("look [COLD]"), changes(looked));
    }

    /** The door must not be open with the flap, and the last thing is at the door again. */
    @Test
    void whatMustNotBeOpenTogetherIsClosedBetweenAndOpenedAgain() throws Exception {
        crane.crane(access("door", "", "", "", "<notWithWhy>They strike each other.</notWithWhy><notWith href=\"#flap\"/>")
                + access("flap", "", "", "", ""));
        crane.work("c-at-door", "RENEW", "door", "", to("before", "b-at-flap")).work("b-at-flap", "RENEW", "flap", "",
                to("before", "a-at-door")).work("a-at-door", "RENEW", "door", "", "");
        var plan = crane.plan("a-at-door", "b-at-flap", "c-at-door");
        assertEquals(List.of("+door", "a-at-door", "-door", "+flap", "b-at-flap", "-flap", "+door again", "c-at-door", "-door"),
                order(plan));
        assertEquals(List.of("'Door' is opened a second time: it must not be open together with 'Flap'.",
                "'Door': They strike each other."), plan.remarks().subList(0, 2));
    }

    @Test
    void ofTwoWaysTheChosenOneStandsInThePlan() throws Exception {
        crane.procedure("renew", "RENEW", "", way("way-dear", "", "minutesUsual=\"90 min\"", "") + way("way-cheap", "hood",
                "minutesUsual=\"20 min\"", ""));
        crane.shop("", "<rates id=\"rate\" perHour=\"60.00\" skill=\"TECHNICIAN\"/>");
        var plan = crane.plan("renew");
        assertEquals(List.of("+hood", "renew", "-hood"), order(plan));
        assertEquals(new Minutes(20, 20), plan.items(PlanItem.Part.WORK).get(0).minutes());
    }
}
