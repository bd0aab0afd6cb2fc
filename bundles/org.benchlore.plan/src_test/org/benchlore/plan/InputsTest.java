// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.plan.QuayCrane.access;
import static org.benchlore.plan.QuayCrane.order;
import static org.benchlore.plan.QuayCrane.to;
import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.plan.PlanItem.Part;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes into a plan: what is asked for, what it holds, what it waits for, what is open and what was done. */
class InputsTest {

    private static final String FOR_BARGE = "<applicability><machine href=\"../machines/barge.xmi#barge\"/></applicability>";
    private static final String FOR_CRANE = "<applicability><machine href=\"../machines/crane.xmi#crane\"/></applicability>";

    @TempDir
    Path folder;

    private QuayCrane crane;

    @BeforeEach
    void twoCovers() throws Exception {
        crane = new QuayCrane(folder).crane(access("hood", "", "", "", "") + access("door", "", "", "", "")
                + access("lid", "hood|door", "", "", ""));
    }

    @Test
    void aWithdrawnProcedureIsRefusedWithWhatTakesItsPlace() throws Exception {
        crane.work("new", "RENEW", "", "", "").put("procedures/old.xmi", "Procedure", "id=\"old\" status=\"WITHDRAWN\"",
                "<replacedBy href=\"new.xmi#new\"/>").put("procedures/bad.xmi", "Procedure", "id=\"bad\" status=\"WITHDRAWN\"", "");
        assertEquals("'old' is withdrawn: plan 'new' instead [old]", crane.refused(List.of("old"), List.of()));
        assertEquals("'bad' is withdrawn: choose another procedure [bad]", crane.refused(List.of("bad"), List.of()));
    }

    @Test
    void aProcedureForOtherMachinesIsRefusedWithTheirNames() throws Exception {
        crane.work("a", "RENEW", "", "", FOR_BARGE).work("b", "RENEW", "", "", FOR_BARGE + FOR_CRANE).work("c", "RENEW", "", "",
                "<applicability/>");
        assertEquals("'a' is not for 'crane' but for barge; choose another procedure [a, crane, barge]",
                crane.refused(List.of("a"), List.of()));
        assertEquals(List.of("b", "c"), order(crane.plan("b", "c")));
    }

    @Test
    void aDraftIsPlannedAndSaidToBeOne() throws Exception {
        crane.put("procedures/new.xmi", "Procedure", "id=\"new\" status=\"DRAFT\" wholeJobUsual=\"30 min\"", "");
        assertEquals("'new' is a draft that nobody has reviewed.", crane.plan("new").remarks().get(0));
        assertTrue(crane.plan("new").needsSenior());
    }

    @Test
    void whatHasBeenDoneIsNotDoneAgainAndSaidSo() throws Exception {
        crane.work("early", "INSPECT", "", "", "").work("a", "RENEW", "hood", "", to("before", "early"))
                .work("b", "RENEW", "hood", "", "");
        var plan = crane.plan(List.of("a", "b"), List.of(), List.of("b", "early"));
        assertEquals(List.of("+hood", "a", "-hood"), order(plan));
        assertEquals("'B' has been done.", plan.remarks().get(0));
    }

    @Test
    void byDoingAProcedureWhatItHoldsIsDoneToo() throws Exception {
        crane.work("whole", "OVERHAUL", "", "", to("includes", "part")).work("part", "RENEW", "", "", to("includes", "bolt"))
                .work("bolt", "RENEW", "", "", "");
        var plan = crane.plan("bolt", "part", "whole");
        assertEquals(List.of("whole"), order(plan));
        assertEquals(List.of("'Bolt' is done by 'Part' and counted once.", "'Part' is done by 'Whole' and counted once."),
                plan.remarks().subList(0, 2));
        assertEquals(List.of(), order(crane.plan(List.of("bolt"), List.of(), List.of("whole"))));
    }

    @Test
    void aProcedureWithoutAnyWayHereIsRefused() throws Exception {
        crane.work("at-barge", "RENEW", "hatch", "", "").procedure("bare", "RENEW", "wholeJobBad=\"3 h\"", "")
                .procedure("half", "RENEW", "wholeJobUsual=\"2 h\"", way("way-half", "hatch", "", ""));
        var end = "' has no way that can be done on 'crane'; write one down, or its time for the whole job [";
        assertEquals("'at-barge" + end + "at-barge]", crane.refused(List.of("at-barge"), List.of()));
        assertEquals("'bare" + end + "bare]", crane.refused(List.of("bare"), List.of()));
        assertEquals("'half" + end + "half]", crane.refused(List.of("half"), List.of()), "its only way is for the barge");
    }

    @Test
    void ofWaysThoseForOtherMachinesAreLeftOut() throws Exception {
        crane.procedure("renew", "RENEW", "", way("way-barge", "hatch", "minutesUsual=\"1 min\"", "")
                + way("way-both", "hood hatch", "minutesUsual=\"2 min\"", "") + way("way-own", "hood", "minutesUsual=\"30 min\"", ""));
        assertEquals(new Minutes(30, 30), crane.plan("renew").items(Part.WORK).get(0).minutes());
    }

    @Test
    void aNeedThatNamesNothingIsRefused() throws Exception {
        crane.procedure("renew", "RENEW", "", "<ways id=\"way\"><needs/><work id=\"work\" minutesUsual=\"5 min\"/></ways>");
        assertEquals("'renew' cannot be reached: one of its needs names no access; write down which one [renew]",
                crane.refused(List.of("renew"), List.of()));
    }

    @Test
    void afterClosingTheWayThatNeedsNothingIsTakenThenTheCheapestThenTheFirstByName() throws Exception {
        crane.shop("", "<rates id=\"rate\" perHour=\"60.00\" skill=\"TECHNICIAN\"/>");
        crane.procedure("fill", "SERVICE", "", way("way-a", "hood", "minutesUsual=\"1 min\"", "") + way("way-b", "",
                "minutesUsual=\"9 min\"", "") + way("way-c", "", "minutesUsual=\"5 min\" minutesBad=\"6 min\"", "")
                + way("way-d", "", "minutesUsual=\"5 min\" minutesBad=\"7 min\"", "") + "<ways id=\"way-0\"/>");
        crane.work("renew", "RENEW", "", "", to("afterClosing", "fill"));
        assertEquals(new Minutes(5, 6), crane.plan("renew").items(Part.CLOSING).get(0).minutes());
        assertEquals(1500, crane.plan("renew").solution().cost(), "10 and 5 min at 60 an hour, in cents");
    }

    @Test
    void whatIsAskedForAndIsDoneAfterClosingAnywayIsDoneOnceThere() throws Exception {
        crane.work("fill", "SERVICE", "", "", "").work("renew", "RENEW", "hood", "", to("afterClosing", "fill"));
        assertEquals(List.of("+hood", "renew", "-hood", ")fill"), order(crane.plan("fill", "renew")));
        crane.work("fill", "SERVICE", "hood", "", "");
        assertEquals(List.of("+hood", "fill", "renew", "-hood", "+hood again", ")fill", "-hood again"),
                order(crane.plan("fill", "renew")), "it needs an access, so it is done while that is open as well");
    }

    @Test
    void whatWasDoneStillAsksForWhatComesAfterClosing() throws Exception {
        crane.work("fill", "SERVICE", "", "", to("afterClosing", "test")).work("test", "TEST", "", "", "")
                .work("renew", "RENEW", "hood", "", to("afterClosing", "fill"));
        assertEquals(List.of("-hood", ")fill", ")test"), order(crane.plan(List.of(), List.of("hood"), List.of("renew"))));
        assertEquals(List.of("-hood", ")test"), order(crane.plan(List.of(), List.of("hood"), List.of("fill", "renew"))));
    }

    @Test
    void whatMustBeOpenForWhatIsOpenIsTakenAsOpenAndSaid() throws Exception {
        crane.work("renew", "RENEW", "lid", "", "");
        var plan = crane.plan(List.of("renew"), List.of("lid"), List.of());
        assertEquals(List.of("renew", "-lid", "-hood"), order(plan));
        assertEquals("Taken as open as well, because something open needs it: 'Hood' (or another of hood, door); tick the other one"
                + " if it is another, on the command line --open.", plan.remarks().get(0));
        assertEquals(List.of("renew", "-lid", "-door"), order(crane.plan(List.of("renew"), List.of("lid", "door"), List.of())));
    }

    @Test
    void whereThereIsNoChoiceNoneIsOffered() throws Exception {
        crane.crane(access("hood", "", "", "", "") + access("lid", "hood", "", "", "") + access("core", "lid", "", "", ""));
        crane.work("renew", "RENEW", "core", "", "");
        var plan = crane.plan(List.of("renew"), List.of("core"), List.of());
        assertEquals(List.of("renew", "-core", "-lid", "-hood"), order(plan));
        assertTrue(plan.remarks().get(0).contains("needs it: 'Hood', 'Lid'; tick"), plan.remarks()::toString);
    }

    @Test
    void anAccessTheMachineDoesNotHaveIsRefusedWithThoseItHas() throws Exception {
        crane.work("renew", "RENEW", "", "", "");
        assertEquals("'crane' has no access 'roof'; it has hood, door, lid [roof]", crane.refused(List.of("renew"), List.of("roof")));
    }

    @Test
    void whatIsNotInTheLibraryIsRefusedWithHowToFindIt() throws Exception {
        assertEquals("There is no procedure 'x'; 'find TEXT --kind procedure' finds ids [x]", crane.refused(List.of("x"), List.of()));
        crane.put("units/crane-1.xmi", "Unit", "id=\"crane-1\"", "");
        assertEquals("The unit 'crane-1' names no machine; write down its type [crane-1]", crane.refused(List.of("x"), List.of()));
        crane.put("units/crane-1.xmi", "Part", "id=\"crane-1\"", "");
        assertTrue(crane.refused(List.of("x"), List.of()).startsWith("'crane-1' is neither a machine nor a unit")
                || crane.refused(List.of("x"), List.of()).startsWith("There is no machine or unit 'crane-1'"));
    }

    private long cost(String work, String body) throws Exception {
        return crane.procedure("renew", "RENEW", "", way("way", "", work, body)).plan("renew").solution().cost();
    }

    /** 30 min of two at 60 an hour are 60.00; a pump of 20.00 twice, 1 of 4 L of oil at 10.00: 102.50 in cents. */
    @Test
    void whatIsWeighedIsLabourOfAllPeopleAndWhatIsAlwaysUsed() throws Exception {
        crane.shop("", "<rates id=\"rate\" perHour=\"60.00\" skill=\"TECHNICIAN\"/>")
                .put("parts/pump.xmi", "Part", "id=\"pump\" price=\"20.00\"", "").put("parts/bare.xmi", "Part", "id=\"bare\"", "")
                .put("supplies/oil.xmi", "Supply", "id=\"oil\" price=\"10.00\" pack=\"4 L\"", "");
        var pump = "<part href=\"../parts/pump.xmi#pump\"/></parts>";
        var oil = "<supply href=\"../supplies/oil.xmi#oil\"/></supplies>";
        assertEquals(3000, cost("minutesUsual=\"30 min\"", ""));
        assertEquals(3000, cost("minutesUsual=\"30 min\" people=\"0\"", ""), "nobody is not a number of people");
        assertEquals(10250, cost("minutesUsual=\"30 min\" people=\"2\"", "<parts id=\"u1\" quantity=\"2\">" + pump
                + "<parts id=\"u2\" need=\"IF_FOUND\">" + pump + "<parts id=\"u3\"><part href=\"../parts/bare.xmi#bare\"/></parts>"
                + "<supplies id=\"s1\" quantity=\"1 L\" way=\"IN\">" + oil + "<supplies id=\"s2\" quantity=\"3 L\" way=\"OUT\">" + oil));
    }
}
