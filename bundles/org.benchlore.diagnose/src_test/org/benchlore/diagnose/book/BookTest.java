// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;

import org.benchlore.model.BookFactory;
import org.benchlore.model.Frequency;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.WeightKind;
import org.benchlore.terms.WordGroups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BookTest {

    private final SymptomWords words = new SymptomWords(new WordGroups(List.of(), List.of(
            List.of("teach in", "learn in", "learning"), List.of("power take-off", "PTO"))));

    @ParameterizedTest
    @CsvSource({"Teach-in stops, teach in stopped, 1", "Teach-in stops, Learning stops, 1", "PTO howls, The power take-off howls, 1",
        "Teach-in stops, Learning fails, 0.5", "arm slow loaded, arm slow, 0.8", "arm slow, brake squeals, 0", "'', arm, 0",
        "the of, the of, 0", "pump fails, hull leaks, 0", "rolled, roll, 1", "PTO and winch, learn in and winch, 0.5", "arm is slow today, arm fast, 0"})
    void complaintsAreAlikeByTheWordsTheyShare(String one, String other, double alike) {
        assertEquals(alike, words.alike(one, other), 1e-12);
        assertEquals(alike, words.alike(other, one), 1e-12);
    }

    @Test
    void theNearestOfSeveralCounts() {
        assertEquals(1, words.alike("arm slow", List.of("brake squeals", "slow arm")));
        assertEquals(0, words.alike("arm slow", List.of()));
    }

    @ParameterizedTest
    @CsvSource({"arm goes slow, today the arm goes slow again, 0.75", "goes slow, today the arm goes slow, 0",
        "arm goes fast, today the arm goes slow, 0"})
    void aLongTextSpeaksOfAComplaintIfItHoldsEveryWord(String complaint, String text, double within) {
        assertEquals(within, words.within(complaint, text));
    }

    @ParameterizedTest
    @CsvSource({"W150, W100, W199, true", "W100, W100, W199, true", "W199, W100, W199, true", "W200, W100, W199, false",
        "W99, W100, W199, false", "W1000, W100, W199, false", "W5, , W199, true", "W5, W4, , true", "W3, W4, , false"})
    void serialNumbersLieWithinLimits(String serial, String from, String to, boolean within) {
        assertEquals(within, CaseFile.isWithin(serial, from, to));
    }

    @ParameterizedTest
    @EnumSource(value = WeightKind.class, names = "NOT_RECORDED", mode = EnumSource.Mode.EXCLUDE)
    void everyWeightHasAnUsualFigure(WeightKind kind) {
        assertTrue(new Weights(null).of(kind) > 0);
    }

    private static Weights with(WeightKind kind, String value) {
        var shop = BookFactory.eINSTANCE.createShop();
        var weight = BookFactory.eINSTANCE.createWeight();
        weight.setKind(kind);
        weight.setValue(value == null ? null : new BigDecimal(value));
        shop.getWeights().add(weight);
        return new Weights(shop);
    }

    @ParameterizedTest
    @CsvSource({"OLD_PART_KEPT, 4, 4", "OLD_PART_KEPT, 1000, 1000", "OLD_PART_KEPT, 1001, 3", "OLD_PART_KEPT, 0, 3", "OLD_PART_KEPT, , 3",
        "STRAY, 0.02, 0.02", "STRAY, 1, 0.01", "STRAY, 0, 0.01", "CHECK_MINUTES, 12, 12", "DISTURBED, 2, 2", "NEW_PART, 1.5, 1.5"})
    void theShopsFigureCountsWhereItIsUsable(WeightKind kind, String value, double used) {
        assertEquals(used, with(kind, value).of(kind));
    }

    @Test
    void whatAShopDoesNotSayIsTakenAsUsual() {
        var shop = BookFactory.eINSTANCE.createShop();
        assertEquals(10, new Weights(shop).priorWorth());
        assertEquals(80, new Weights(shop).surePercent());
        assertEquals(10, new Weights(null).priorWorth());
        shop.setPriorWorth(new BigDecimal("25"));
        shop.setSurePercent(new BigDecimal("90"));
        assertEquals(25, new Weights(shop).priorWorth());
        assertEquals(90, new Weights(shop).surePercent());
        shop.setPriorWorth(BigDecimal.ZERO);
        shop.setSurePercent(new BigDecimal("100"));
        assertEquals(10, new Weights(shop).priorWorth());
        assertEquals(99, new Weights(shop).surePercent());
    }

    @Test
    void oftenIsMoreThanSometimesAndSometimesMoreThanRarely() {
        var weights = new Weights(null);
        assertTrue(weights.of(Frequency.OFTEN) > weights.of(Frequency.SOMETIMES));
        assertTrue(weights.of(Frequency.SOMETIMES) > weights.of(Frequency.NOT_RECORDED));
        assertTrue(weights.of(Frequency.NOT_RECORDED) > weights.of(Frequency.RARELY));
    }

    @Test
    void heldTiesMoreThanSeenAndRuledOutNothing() {
        var weights = new Weights(null);
        assertTrue(weights.links(NoteStatus.HELD) > weights.links(NoteStatus.SEEN));
        assertTrue(weights.links(NoteStatus.SEEN) > weights.links(NoteStatus.UNSORTED));
        assertEquals(weights.links(NoteStatus.UNSORTED), weights.links(NoteStatus.SUSPECTED));
        assertEquals(0, weights.links(NoteStatus.RULED_OUT));
        assertEquals(0, weights.counts(NoteStatus.SUPERSEDED));
        assertEquals(1, weights.counts(NoteStatus.HELD));
        assertEquals(0.5, weights.counts(NoteStatus.SUSPECTED));
    }

    /** A driver says two things in a breath; each may be what somebody wrote down. */
    @Test
    void aClauseOfAComplaintIsAlikeAsFarAsItGoes() {
        assertEquals(0.75, words.alike("lights flicker, volts hunt up and down", "Lights flicker"), 1e-9);
        assertEquals(0.75 * 2 * 2 / 6, words.alike("lights flicker, volts hunt up and down", "Volts hunt slowly"), 1e-9);
        assertEquals(0.75, words.alike("lights flicker, volts hunt up and down", "Volts hunt"), 1e-9, "all of it is said");
        assertEquals(0, words.alike("lights out, volts up and down", "Down"), "one word is no clause");
        assertEquals(1, words.alike("Door stops and opens", "Door stops and opens"), 1e-9);
    }

    @Test
    void notIsNotInWhateverWayItIsPut() {
        for (var put : java.util.List.of("Crane wont slew", "Crane won't slew", "the crane will not slew", "crane doesn\u2019t slew")) {
            assertEquals(1, words.alike(put, "Crane does not slew"), 1e-9, put);
        }
    }

    @Test
    void aWordNoPaperOfTheMachineUsesCountsAQuarter() {
        var among = words.among(java.util.List.of("Crane slews slowly"), "");
        assertEquals(2.0 * 3 / (3 + 3.25), among.alike("Hans: crane slews slowly", "Crane slews slowly"), 1e-9);
        assertEquals(2.0 * 3 / (3 + 4), words.alike("Hans: crane slews slowly", "Crane slews slowly"), 1e-9);
    }

    @Test
    void aShortComplaintThatIsHeldInALongOneCountsThreeQuarters() {
        assertEquals(0.75, words.alike("Crane slews slowly since the cold days before Sunday", "Crane slews slowly"), 1e-9);
        assertEquals(0, words.alike("Crane slews slowly since the cold days before Sunday", "Crane leans"), 1e-9, "one word is not all");
    }

    @Test
    void aDenialAloneIsNothingInCommon() {
        assertEquals(0, words.alike("Door does not lock", "Door does not shine, hoot, roll or flash"), 1e-9);
        assertEquals(0, words.alike("Hook will not turn red", "Start-stop does not work"), 1e-9);
    }

    @Test
    void endingsDoNotMatter() {
        assertEquals(1, words.alike("Deliveries stopped", "Delivery stops"), 1e-9);
        assertEquals(1, words.alike("brake", "Braking"), 1e-9);
    }
}
