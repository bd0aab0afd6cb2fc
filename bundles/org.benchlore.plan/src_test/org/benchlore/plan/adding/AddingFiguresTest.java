// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

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
import java.util.OptionalInt;
import java.util.Set;

import org.benchlore.evidence.decide.Benefit;
import org.junit.jupiter.api.Test;

/** Every figure of something added, reckoned by hand. */
class AddingFiguresTest extends CraneShop {

    /**
     * With: 20 min and 50.00, 70.00 net. Apart: 80 min and 50.00, 130.00 net, 143.00; of it the part 55.00. The test is 12 min,
     * 13.20. Ruined: the motor with that job, 30 min and 200.00, 253.00, every other time. Beside, without tax: (13.20 + 126.50)
     * / 1.1 = 127.00. The part is there on Saturday, so it is done on Monday, five days after Wednesday.
     */
    @Test
    void everyFigureStandsWithWhereItComesFrom() throws Exception {
        var one = brake();
        figures(one, Map.of(Figure.EXTRA, "77", Figure.SHOP_EXTRA, "70", Figure.LABOUR, "88", Figure.PARTS, "55", Figure.SUPPLIES, "0",
                Figure.FINDING, "13.2", Figure.TEST, "13.2", Figure.RUINS, "253", Figure.RUINS_OFTEN, "50", Figure.SHOP_AGAIN, "130"));
        figures(one, Map.of(Figure.SHOP_BESIDE, "127", Figure.DAYS_OUT, "5", Figure.PART_DAYS, "3", Figure.HOLDING, "55",
                Figure.TEST_FINDS, "90", Figure.TEST_BLAMES, "5", Figure.UNIT_VALUE, "900", Figure.COMEBACK_COST, "100",
                Figure.DAY_OUT, "0"));
        assertEquals(List.of(20L, 80L), List.of(one.extra(), one.apart()));
        assertEquals(Proposal.Basis.PLANS, one.basis());
        assertEquals(Optional.of("Test brake"), one.test());
        assertEquals("machines/crane.xmi#brake", one.component());
        assertTrue(one.canOrder());
        for (var from : Map.of(Figure.EXTRA, "the plan with it less the plan without", Figure.FINDING, "'Test brake' with that job",
                Figure.TEST, "'Test brake' with this job", Figure.RUINS, "renewing 'Motor' with that job", Figure.RUINS_OFTEN,
                "the machine's page, beside the component", Figure.TEST_FINDS, "the machine's page, beside the cause", Figure.DAY_OUT,
                "not written down", Figure.UNIT_VALUE, "the machine's page", Figure.COMEBACK_COST, "the shop's page").entrySet()) {
            assertEquals(from.getValue(), one.assumptions().find(from.getKey()).orElseThrow().from());
        }
    }

    /** Again: 88 + 55 + 13.20 + half of 253: 282.70. */
    @Test
    void theCustomersSumHoldsTheRuinAsOftenAsItComes() throws Exception {
        assertEquals(new BigDecimal("282.70"), brake().assumptions().customer().apartLater());
    }

    @Test
    void whatTheMachinesPageDoesNotSayIsTakenAndSaidToBe() throws Exception {
        machine("ruins=\"motor\"", "checkFinds=\"120\"");
        var one = brake();
        figures(one, Map.of(Figure.RUINS_OFTEN, "100", Figure.TEST_FINDS, "100", Figure.TEST_BLAMES, "0"));
        assertEquals("taken as every time: nobody has written down how often", one.assumptions().find(Figure.RUINS_OFTEN).orElseThrow()
                .from());
        assertEquals("taken as none: nobody has written it down", one.assumptions().find(Figure.TEST_BLAMES).orElseThrow().from());
        machine("", "");
        assertFalse(brake().assumptions().find(Figure.TEST_FINDS).isPresent());
        assertFalse(brake().assumptions().find(Figure.RUINS).isPresent());
        assertFalse(brake().assumptions().find(Figure.RUINS_OFTEN).isPresent());
    }

    @Test
    void whereNothingRenewsWhatIsRuinedItsPartCounts() throws Exception {
        machine("ruins=\"lamp motor\"", "");
        crane.procedure("renew-motor", "ADJUST", "", component("motor") + "<applicability><machine href=\"../machines/crane.xmi#crane\"/>"
                + "</applicability>" + way("w", "hood", "minutesUsual=\"30 min\"", ""));
        assertEquals("200", value(brake(), Figure.RUINS), "the lamp has no part and counts nothing");
        part("p-motor", "price=\"200.00\"", "<supersededBy href=\"p-brake.xmi#p-brake\"/>");
        assertEquals("0", value(brake(), Figure.RUINS), "that number is not to be had any more");
    }

    @Test
    void ofTwoThatRenewWhatIsRuinedTheCheaperCountsAndNoneThatIsWithdrawn() throws Exception {
        renew("renew-drive", "drive", "hood", "10 min", "");
        assertEquals("11", value(brake(), Figure.RUINS), "10 min with tax; the drive holds the motor");
        crane.put("procedures/renew-drive.xmi", "Procedure", "id=\"renew-drive\" kind=\"RENEW\" status=\"WITHDRAWN\"", component("drive")
                + way("way-drive", "hood", "minutesUsual=\"10 min\"", ""));
        assertEquals("253", value(brake(), Figure.RUINS));
    }

    @Test
    void aPartOnTheShelfOrOneThatCanGoBackIsNotHeldForNothing() throws Exception {
        part("p-brake", "price=\"50.00\" leadTime=\"3 d\" returnable=\"YES\"", "");
        figures(brake(), Map.of(Figure.PART_DAYS, "3", Figure.HOLDING, "0"));
        part("p-brake", "price=\"50.00\" leadTime=\"25 h\" returnable=\"NO\"", "");
        figures(brake(), Map.of(Figure.PART_DAYS, "2", Figure.HOLDING, "55"));
        crane.shop("taxPercent=\"10\"", RATE + "<sites id=\"site\"><stock id=\"st\" quantity=\"1 pcs\"><part href=\"parts/p-brake.xmi#p-brake\"/>"
                + "</stock></sites>");
        figures(brake(), Map.of(Figure.PART_DAYS, "0", Figure.HOLDING, "0"));
    }

    @Test
    void aDayOutIsFromTheUnitsPage() throws Exception {
        unit("dayOut=\"70.00\"", "");
        assertEquals("70", value(brake(), Figure.DAY_OUT));
        assertEquals("the unit's page", brake().assumptions().find(Figure.DAY_OUT).orElseThrow().from());
    }

    /** One in ten of the note's, worth ten jobs; renewed, the shop's own half of a hundred. */
    @Test
    void theChancesAreTheNotesAndTheShops() throws Exception {
        figures(brake(), Map.of(Figure.COMES_BACK, "10", Figure.TROUBLE, "0.5"));
        assertEquals("1 of about 10 of ours", brake().known().words());
        note("a", "", "", "renew-brake");
        assertFalse(brake().assumptions().find(Figure.COMES_BACK).isPresent());
        assertFalse(brake().known().isKnown());
    }

    /** 5 min now and 60 alone, part 8.00: 13.00 and 68.00, with tax 14.30 and 66.00 + 8.80. */
    @Test
    void whereNoWorkIsWrittenTheNotesMinutesAndPriceDo() throws Exception {
        note("a", "", "<seen count=\"2\" ofAbout=\"10\"/>", "", "workText=\"Change the clip\" extra=\"5 min\" alone=\"60 min\" partPrice=\"8.00\"");
        var one = adding("renew-motor").proposal("add-a").orElseThrow();
        assertEquals("Change the clip", one.title());
        assertEquals(List.of(5L, 60L), List.of(one.extra(), one.apart()));
        figures(one, Map.of(Figure.EXTRA, "14.3", Figure.LABOUR, "66", Figure.PARTS, "8.8", Figure.SHOP_EXTRA, "13", Figure.SHOP_AGAIN, "68",
                Figure.COMES_BACK, "20", Figure.TROUBLE, "0.5", Figure.COMEBACK_COST, "100"));
        assertEquals(Set.of(Benefit.NO_SECOND_STAND), one.benefits());
        assertEquals("", one.component());
        assertEquals("2 of about 10 of ours", one.known().words());
        assertEquals("the note's minutes and part, at the technician's rate", one.assumptions().find(Figure.EXTRA).orElseThrow().from());
    }

    @Test
    void keptForYearsTheCountIsForThatTimeAndNeverForLessThanAMonth() throws Exception {
        unit("keptUntil=\"2027\"", "");
        assertEquals(21, adding("renew-motor").months().getAsInt());
        years = OptionalInt.of(0);
        assertEquals(1, adding("renew-motor").months().getAsInt());
    }

    @Test
    void aFigureThatMakesNoSenseIsRefused() throws Exception {
        var one = brake();
        assertEquals("'ruins-often' cannot be 101: give a figure from 0 to 100.", assertThrows(IllegalArgumentException.class,
                () -> one.with(Figure.RUINS_OFTEN, new BigDecimal("101"))).getMessage());
        assertEquals("'extra' cannot be -1: give 0 or more.", assertThrows(IllegalArgumentException.class,
                () -> one.with(Figure.EXTRA, new BigDecimal("-1"))).getMessage());
        assertEquals("100", value(one.with(Figure.RUINS_OFTEN, new BigDecimal("100")), Figure.RUINS_OFTEN));
        assertEquals("0", value(one.with(Figure.EXTRA, BigDecimal.ZERO), Figure.EXTRA));
        assertTrue(one.with(Figure.EXTRA, BigDecimal.ONE).assumptions().find(Figure.EXTRA).orElseThrow().byHand());
    }
}
