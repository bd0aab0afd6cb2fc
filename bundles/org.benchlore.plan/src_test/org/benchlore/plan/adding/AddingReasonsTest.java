// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import static org.benchlore.plan.QuayCrane.access;
import static org.benchlore.plan.QuayCrane.to;
import static org.benchlore.plan.QuayCrane.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.evidence.decide.Benefit;
import org.benchlore.evidence.decide.Reason;
import org.benchlore.plan.search.PlanException;
import org.junit.jupiter.api.Test;

/** What is thought of at all, why, and in what order. */
class AddingReasonsTest extends CraneShop {

    @Test
    void itIsSaidWhyItIsThoughtOfAndWhatItBuys() throws Exception {
        assertEquals(List.of(Reason.NOTE, Reason.RUINS, Reason.CAN_HURT), brake().reasons());
        assertEquals(Set.of(Benefit.ONE_SUSPECT_FEWER, Benefit.NO_SECOND_STAND), brake().benefits());
        machine("", "");
        assertEquals(List.of(Reason.NOTE), brake().reasons());
        part("p-brake", "price=\"50.00\"", "<life shape=\"2\" scale=\"9000 h\"/>");
        assertEquals(List.of(Reason.NOTE, Reason.LIFE), brake().reasons());
    }

    @Test
    void whatOnlyCanHurtIsNotAReasonByItself() throws Exception {
        note("a", "status=\"RULED_OUT\"", "", "renew-brake");
        assertEquals(List.of(Reason.RUINS, Reason.CAN_HURT), brake().reasons());
        machine("safetyCritical=\"YES\"", "");
        assertEquals(List.of(), ids(adding("renew-motor")));
    }

    /** The lamp has neither a part nor work that renews it: what is not known is said and is not nothing. */
    @Test
    void whatIsRuinedWithoutAPriceIsSaidToBeMissing() throws Exception {
        machine("ruins=\"lamp\"", "");
        var figure = brake().assumptions().find(Figure.RUINS).orElseThrow();
        assertEquals(0, figure.value().signum());
        assertEquals("too low: nobody has written down what renewing 'Lamp' costs", figure.from());
        machine("ruins=\"motor lamp\"", "");
        assertEquals("renewing 'Motor' with that job; too low: nobody has written down what renewing 'Lamp' costs",
                brake().assumptions().find(Figure.RUINS).orElseThrow().from());
    }

    @Test
    void anOverhaulRenewsWhatIsRuinedTooAndTheWorkItselfIsNoTest() throws Exception {
        machine("ruins=\"lamp\"", "");
        crane.procedure("overhaul-lamp", "OVERHAUL", "", component("lamp") + way("w", "", "minutesUsual=\"30 min\"", ""));
        assertEquals(0, brake().assumptions().value(Figure.RUINS).compareTo(new BigDecimal("33.00")));
        assertTrue(brake().test().isPresent());
        crane.put("machines/crane.xmi", "Machine", "id=\"crane\" title=\"Crane\"", MACHINE.replace("BRAKE", "").replace("TELLS", "")
                .replace("test-brake.xmi#test-brake", "renew-brake.xmi#renew-brake"));
        assertEquals(Optional.empty(), brake().test());
        assertTrue(brake().assumptions().find(Figure.TEST).isEmpty());
    }

    @Test
    void notesThatAreSpentOrOfOtherMachinesOrOtherWorkSayNothing() throws Exception {
        machine("", "");
        assertEquals(List.of("renew-brake"), ids(adding("renew-motor")));
        note("a", "status=\"SUPERSEDED\"", "", "renew-brake");
        assertEquals(List.of(), ids(adding("renew-motor")));
        note("a", "", "", "renew-brake");
        assertEquals(List.of(), ids(adding("test-brake")), "not while testing");
        assertEquals(List.of(), ids(adding("renew-brake", "renew-motor")), "asked for already");
        assertEquals(List.of(), ids(adding(List.of("renew-motor"), List.of(), List.of("renew-brake"))), "done already");
        assertEquals(List.of("renew-brake"), ids(adding(List.of("test-brake"), List.of("hood"), List.of("renew-motor"))));
    }

    @Test
    void whatComesWithThePlanIsNotAdded() throws Exception {
        renew("renew-lamp", "lamp", "", "5 min", "");
        note("b", "", "", "renew-lamp");
        assertTrue(ids(adding("renew-motor")).contains("renew-lamp"));
        crane.procedure("renew-motor", "RENEW", "", to("afterClosing", "renew-lamp") + component("motor") + way("w", "hood",
                "minutesUsual=\"30 min\"", ""));
        assertFalse(ids(adding("renew-motor")).contains("renew-lamp"));
    }

    @Test
    void severalNotesOnOneWorkStandTogetherInOrder() throws Exception {
        note("b", "", "", "renew-brake", "extra=\"5 min\"");
        assertEquals(List.of("note-2026-a", "note-2026-b"), brake().notes());
        assertEquals("1 of about 10 of ours", brake().known().words());
    }

    @Test
    void aNoteWithoutAWholeTallyLeavesTheChanceOpen() throws Exception {
        for (var seen : List.of("", "<seen/>", "<seen count=\"1\"/>", "<seen ofAbout=\"10\"/>", "<seen count=\"1\" ofAbout=\"0\"/>")) {
            note("a", "", seen, "", "workText=\"Change the clip\" extra=\"60 min\" alone=\"60 min\"");
            var one = adding("renew-motor").proposal("add-a").orElseThrow();
            assertFalse(one.known().isKnown(), seen);
            assertEquals(Set.of(), one.benefits(), "alone it takes no longer");
        }
    }

    @Test
    void ofTwoNumbersTheOneAJobFittedIsAskedAbout() throws Exception {
        part("p-new", "price=\"60.00\"", "");
        part("p-brake", "price=\"50.00\"", "<supersededBy href=\"p-new.xmi#p-new\"/>");
        crane.put("machines/crane.xmi", "Machine", "id=\"crane\" title=\"Crane\"", MACHINE.replace("BRAKE", "").replace("TELLS", "")
                .replace("<parts href=\"../parts/p-brake.xmi#p-brake\"/>", "<parts href=\"../parts/p-brake.xmi#p-brake\"/>"
                        + "<parts href=\"../parts/p-new.xmi#p-new\"/>"));
        assertEquals(Optional.empty(), brake().known().oldPart());
        assertEquals("p-brake", brake().known().newPart().orElseThrow().id());
        job("b", "2025-02-01", "<rounds id=\"r\"><done><renewed href=\"../../machines/crane.xmi#brake\"/>"
                + "<fitted href=\"../../parts/p-new.xmi#p-new\"/></done></rounds>");
        assertEquals("p-new", brake().known().oldPart().orElseThrow().id());
    }

    /** Nothing renews the winding drum of the chain that brought it back; the lamp is in another chain. */
    @Test
    void whatBroughtItBackInTheChainIsOfferedOrNamed() throws Exception {
        machine("", "");
        note("a", "status=\"RULED_OUT\"", "", "renew-brake");
        job("first", "2025-01-01", "");
        assertEquals(List.of(), ids(adding("renew-motor")));
        job("second", "2025-02-01", cameBack("brake"));
        assertEquals(List.of(Reason.JOBS), brake().reasons());
        assertEquals(List.of(), adding("renew-motor").remarks());
        job("second", "2025-02-01", cameBack("lamp"));
        assertEquals(List.of(), adding("renew-motor").remarks());
        job("second", "2025-02-01", cameBack("drive"));
        assertEquals(List.of("'Drive' brought a unit back before and makes the same function work, but nothing that renews it could be priced:"
                + " write a procedure or a note for it."), adding("renew-motor").remarks());
    }

    /** Behind the far lid, 60 min each way, the brake costs more to reach now than half of what it costs alone. */
    @Test
    void whatOnlyJobsSpeakForIsLeftOutWhereItIsOutOfTheWayAndOutOfTheChain() throws Exception {
        crane.put("machines/crane.xmi", "Machine", "id=\"crane\" title=\"Crane\"", MACHINE.replace("BRAKE", "").replace("TELLS", "")
                + access("lid", "", "minutesUsual=\"60 min\"", "minutesUsual=\"60 min\"", ""));
        renew("renew-lamp", "lamp", "lid", "5 min", "");
        job("first", "2025-01-01", "");
        job("second", "2025-02-01", cameBack("lamp"));
        assertEquals(List.of("renew-brake"), ids(adding("renew-motor")), "the lamp is out of the way and in no chain with the motor");
        renew("renew-lamp", "lamp", "hood", "5 min", "");
        assertTrue(ids(adding("renew-motor")).contains("renew-lamp"), "it lies open");
        renew("renew-lamp", "lamp", "", "5 min", "");
        assertFalse(ids(adding("renew-motor")).contains("renew-lamp"), "it is no nearer than at any other time");
    }

    @Test
    void openingsBesidesStandWithTheirPrice() throws Exception {
        crane.put("machines/crane.xmi", "Machine", "id=\"crane\" title=\"Crane\"", MACHINE.replace("BRAKE", "").replace("TELLS", "")
                + access("lid", "hood", "minutesUsual=\"10 min\"", "minutesUsual=\"14 min\"", ""));
        renew("renew-brake", "brake", "lid", "20 min", "p-brake");
        renew("renew-lamp", "lamp", "lid", "5 min", "");
        note("b", "", of("lamp") + "<seen count=\"5\" ofAbout=\"10\"/>", "renew-lamp");
        var adding = adding("renew-motor");
        assertEquals(Map.of("lid", new BigDecimal("26.40")), adding.proposal("renew-brake").orElseThrow().openings());
        assertEquals(List.of(new Adding.Pair("renew-lamp", "renew-brake", List.of("Lid"), new BigDecimal("108.90"), new BigDecimal("135.30"))),
                adding.pairs(), "5 and 20 min and 50.00 with the lid once, 26.40 less than with it twice");
    }

    /** The lamp fails nine times in ten; how often the drive needs cleaning nobody has counted. */
    @Test
    void whatSavesMostStandsFirstAndWhatIsNotKnownLast() throws Exception {
        renew("renew-lamp", "lamp", "hood", "5 min", "");
        note("b", "", of("lamp") + "<seen count=\"9\" ofAbout=\"10\"/>", "renew-lamp");
        renew("a-clean", "drive", "hood", "5 min", "");
        note("c", "", "", "a-clean");
        assertEquals(List.of("renew-lamp", "renew-brake", "a-clean"), ids(adding("renew-motor")));
    }

    @Test
    void whatIsNotInTheLibraryIsRefused() throws Exception {
        assertTrue(assertThrows(PlanException.class, () -> adding("x")).getMessage().startsWith("There is no procedure 'x'"));
        unit("", "");
        crane.put("units/crane-1.xmi", "Unit", "id=\"crane-1\"", "");
        assertTrue(assertThrows(PlanException.class, () -> adding("renew-motor")).getMessage().contains("neither a machine nor a unit"));
    }
}
