// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.evidence.Estimate;
import org.benchlore.evidence.Wear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecisionsTest {

    private static final Estimate NO_TROUBLE = new Estimate(1e-12, 1);

    private static BigDecimal money(String amount) {
        return new BigDecimal(amount);
    }

    private static Sum sum(String extra, String again) {
        return Sum.of(Payer.CUSTOMER, money(extra), Again.NOTHING.supplied(money(again)));
    }

    private static Verdict verdict(String extra, String again, double comeback, double trouble) {
        return Decisions.decide(Case.of("x", sum(extra, again), Estimate.of(comeback, 100),
                Estimate.of(trouble, 100))).customer();
    }

    /** Break-even = extra / apart later + q. 85 / 505 = 0.16832 stands in the reference values; the rest computed. */
    @ParameterizedTest
    @CsvSource({"85, 505, 0, 0.168317", "270, 1010, 0, 0.267327", "270, 860, 0, 0.313953", "270, 860, 0.1, 0.413953",
        "0, 860, 0.02, 0.02", "1, 1000, 0.005, 0.006"})
    void theBreakEvenIsExtraByApartLaterAndTrouble(String extra, String again, double trouble, double from) {
        assertEquals(from, verdict(extra, again, 0.2, trouble).breakEven().orElseThrow(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"860, 860", "900, 860", "10, 0"})
    void whatCannotPayHasNoBreakEven(String extra, String again) {
        var verdict = verdict(extra, again, 0.99, 0);
        assertTrue(verdict.breakEven().isEmpty());
        assertFalse(verdict.pays());
    }

    @ParameterizedTest
    @CsvSource({"100, 1000, 0.11, 0, true", "100, 1000, 0.09, 0, false", "100, 1000, 0.11, 0.02, false",
        "100, 1000, 0.13, 0.02, true", "0, 1000, 0.02, 0.03, false"})
    void itPaysBeyondTheBreakEven(String extra, String again, double comeback, double trouble, boolean pays) {
        var verdict = verdict(extra, again, comeback, trouble);
        assertEquals(pays, verdict.pays());
        assertEquals(pays ? Option.RENEW : Option.LEAVE, verdict.least());
    }

    /** The worked example of the reference values: shape 2.5, scale 120, age 60, next 30; 85 now, 505 again. */
    @Test
    void thePartThatWearsIsRenewed() {
        double comeback = new Wear(2.5, 120).failsWithin(60, 30);
        assertTrue(verdict("85", "505", comeback, 0).pays());
        assertFalse(verdict("85", "505", new Wear(2.5, 120).failsWithin(0, 30), 0).pays());
    }

    @Test
    void everyWayOutComesToWhatItShould() {
        var look = new Look(0.9, 0.05);
        var asked = Case.of("x", sum("200", "1000").looking(money("30"), money("50"), money("15")),
                Estimate.of(0.2, 100), Estimate.of(0.01, 100))
                .withLooks(Optional.of(look), Optional.of(look), new Delivery(false, true, 4));
        // leave 0.2 x 1000; renew 200 + 0.01 x 1000; a look finds 0.18 and blames 0.04: 0.22 renewed, 0.02 come back
        assertEquals(Map.of(Option.LEAVE, money("200.00"), Option.RENEW, money("210.00"),
                Option.TEST, money("140.20"), Option.SHELF, money("81.20")),
                Decisions.decide(asked).customer().costs());
        assertEquals(Option.SHELF, Decisions.decide(asked).customer().least());
    }

    @Test
    void whatIsNeitherHereNorOrderedCannotBeOnTheShelfAndIsWaitedFor() {
        var look = new Look(1, 0);
        var asked = Case.of("x", sum("200", "1000").looking(money("30"), money("50"), money("15")),
                Estimate.of(0.2, 100), NO_TROUBLE)
                .withLooks(Optional.empty(), Optional.of(look), new Delivery(false, false, 4));
        assertEquals(Map.of(Option.LEAVE, money("200.00"), Option.RENEW, money("400.00")),
                Decisions.decide(asked).customer().costs());
    }

    @Test
    void whatIsHereCostsNoHoldingAndNoWaiting() {
        var look = new Look(1, 0);
        var asked = Case.of("x", sum("200", "1000").looking(money("30"), money("50"), money("15")),
                Estimate.of(0.2, 100), NO_TROUBLE)
                .withLooks(Optional.of(look), Optional.of(look), new Delivery(true, false, 4));
        assertEquals(Map.of(Option.LEAVE, money("200.00"), Option.RENEW, money("200.00"),
                Option.TEST, money("70.00"), Option.SHELF, money("40.00")),
                Decisions.decide(asked).customer().costs());
    }

    @Test
    void leavingWinsATie() {
        var verdict = verdict("200", "1000", 0.2, 0);
        assertEquals(Option.LEAVE, verdict.least());
        assertFalse(verdict.pays());
    }

    @Test
    void nobodyLosesMoreThanTheUnit() {
        assertEquals(money("300"), sum("100", "1000").capped(money("300")).apartLater());
        assertEquals(money("1000"), sum("100", "1000").capped(money("5000")).apartLater());
    }

    @Test
    void againIsAllItsItems() {
        var again = new Again(money("1"), money("2"), money("4"), money("8"), money("16"), money("32"), money("64"));
        assertEquals(money("127"), again.total());
        assertEquals(money("1127"), again.ruining(money("1000")).total());
        assertEquals(money("1127"), again.beside(money("1000")).total());
        assertEquals(money("1127"), again.supplied(money("1000")).total());
    }

    @Test
    void theTwoSumsStandSideBySide() {
        var own = Sum.of(Payer.SHOP, money("10"), Again.NOTHING.beside(money("400")));
        var decision = Decisions.decide(Case.of("x", sum("200", "1000"), Estimate.of(0.1, 100), NO_TROUBLE)
                .withShop(own));
        assertFalse(decision.customer().pays());
        assertTrue(decision.shop().orElseThrow().pays());
        assertEquals(money("40.00"), decision.shop().orElseThrow().costs().get(Option.LEAVE));
        assertEquals(money("100.00"), decision.customer().costs().get(Option.LEAVE));
    }

    @Test
    void theTwoSumsCannotBeMixedUp() {
        var own = Sum.of(Payer.SHOP, money("10"), Again.NOTHING);
        assertThrows(IllegalArgumentException.class, () -> Case.of("x", own, NO_TROUBLE, NO_TROUBLE));
        var sound = Case.of("x", sum("1", "2"), NO_TROUBLE, NO_TROUBLE);
        assertThrows(IllegalArgumentException.class, () -> sound.withShop(sum("1", "2")));
    }

    @Test
    void withoutAFigureThereIsABreakEvenAndNoVerdict() {
        var verdict = Decisions.decide(Case.of("x", sum("85", "505"), NO_TROUBLE, NO_TROUBLE).unknown()).customer();
        assertEquals(0.168317, verdict.breakEven().orElseThrow(), 1e-6);
        assertEquals(Map.of(), verdict.costs());
        assertFalse(verdict.pays());
        assertEquals(0, verdict.sure());
    }

    @Test
    void howSureItIsComesFromTheBandAndNotFromTheFigure() {
        var few = Decisions.decide(Case.of("x", sum("100", "1000"), Estimate.of(0.2, 4), NO_TROUBLE)).customer();
        var many = Decisions.decide(Case.of("x", sum("100", "1000"), Estimate.of(0.2, 400), NO_TROUBLE)).customer();
        assertEquals(few.costs(), many.costs());
        assertEquals(Estimate.of(0.2, 4).sureAbove(0.1), few.sure(), 1e-9);
        assertTrue(few.sure() < 0.7 && many.sure() > 0.99);
        var leave = Decisions.decide(Case.of("x", sum("300", "1000"), Estimate.of(0.2, 400), NO_TROUBLE)).customer();
        assertTrue(!leave.pays() && leave.sure() > 0.99 && leave.sure() <= 1);
    }

    @Test
    void onlyWhatHasAReasonIsShownAndWhatSavesMostComesFirst() {
        var small = Case.of("small", sum("100", "1000"), Estimate.of(0.2, 100), NO_TROUBLE);
        var large = Case.of("large", sum("100", "1000"), Estimate.of(0.6, 100), NO_TROUBLE);
        var nothing = Case.of("no figure", sum("100", "1000"), NO_TROUBLE, NO_TROUBLE).unknown();
        var groundless = Case.of("no reason", sum("100", "1000"), Estimate.of(0.9, 100), NO_TROUBLE)
                .because(List.of(), Set.of());
        assertEquals(List.of("large", "small", "no figure"), Decisions.withReason(List.of(small, groundless, nothing,
                large)).stream().map(decision -> decision.asked().title()).toList());
    }

    @Test
    void aNotesFiguresAloneAreEnough() {
        var sum = Additions.sum(money("12"), money("330"), money("250"), money("100"));
        assertEquals(money("270.00"), sum.extra());
        assertEquals(money("800.00"), sum.apartLater());
        assertEquals(Payer.CUSTOMER, sum.payer());
    }

    @Test
    void worthIsWhatIsSavedBeforeTheExtra() {
        var asked = Case.of("x", sum("200", "1000"), Estimate.of(0.25, 100), Estimate.of(0.05, 100));
        assertEquals(Optional.of(money("200.00")), Decisions.worth(asked, asked.customer()));
        assertEquals(Optional.empty(), Decisions.worth(asked.unknown(), asked.customer()));
    }

    @Test
    void amountsAreNotBelowZeroAndSharesLieWithinOne() {
        assertThrows(IllegalArgumentException.class, () -> sum("-1", "1"));
        assertThrows(IllegalArgumentException.class, () -> sum("1", "-1"));
        assertThrows(IllegalArgumentException.class, () -> sum("1", "1").capped(money("-1")));
        assertThrows(IllegalArgumentException.class, () -> sum("1", "1").looking(money("-1"), money("0"), money("0")));
        assertThrows(IllegalArgumentException.class, () -> sum("1", "1").looking(money("0"), money("-1"), money("0")));
        assertThrows(IllegalArgumentException.class, () -> sum("1", "1").looking(money("0"), money("0"), money("-1")));
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0", "1.1, 0", "0, -0.1", "0, 1.1", "NaN, 0"})
    void sharesLieFromZeroToOne(double finds, double blames) {
        assertThrows(IllegalArgumentException.class, () -> new Look(finds, blames));
    }
}
