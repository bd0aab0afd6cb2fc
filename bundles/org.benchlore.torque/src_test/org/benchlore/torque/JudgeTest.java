// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.measure.Quantity;
import org.benchlore.torque.StatedStage.ByAngle;
import org.benchlore.torque.StatedStage.ToTorque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JudgeTest {

    private static Judge judge(String thread, String propertyClass, FrictionRange friction) {
        return new Judge(ThreadDesignation.parse(thread), PropertyClass.parse(propertyClass), friction);
    }

    private static Verdict judged(String torque, String thread, String propertyClass) {
        return judge(thread, propertyClass, FrictionRange.usual(PropertyClass.parse(propertyClass)))
                .judge(StatedTorque.parse(torque));
    }

    private static List<StatedStage> stages(String text) {
        var stages = new ArrayList<StatedStage>();
        for (var stage : text.split(" then ")) {
            stages.add(stage.endsWith("°") ? ByAngle.parse(stage) : new ToTorque(StatedTorque.parse(stage)));
        }
        return stages;
    }

    /** M10, 8.8: proof 33.7 kN, which at friction 0.12 is 54.9 N·m; usual from half of it. */
    @ParameterizedTest
    @CsvSource({"48 N·m, USUAL", "28 N·m, USUAL", "54 N·m, USUAL", "26 N·m, BELOW", "10 N·m, BELOW", "56 N·m, ABOVE_PROOF",
        "35 lbf·ft, USUAL", "425 lbf·in, USUAL", "4.9 kgf·m, USUAL"})
    void aTorqueHasItsPlace(String torque, Place place) {
        assertEquals(place, judged(torque, "M10", "8.8").place());
    }

    /** Values of VDI's tables at 90 % of yield must be usual: the tables are what makers reckon with. */
    @ParameterizedTest
    @CsvSource({"M8, 8.8, 24.6", "M8, 10.9, 36.1", "M12, 12.9, 144", "M16, 8.8, 206", "M20, 10.9, 592", "M24×2, 12.9, 1282",
        "M12×1.5, 10.9, 120"})
    void whatTheTablesSayIsUsual(String thread, String propertyClass, String torque) {
        var verdict = judged(torque + " N·m", thread, propertyClass);
        assertTrue(verdict.isUsual(), verdict.reasons().toString());
        assertEquals(List.of(), verdict.slips());
        assertEquals("usual", verdict.words());
    }

    /** M10, 10.9 is usual from 39 to 78 N·m at friction 0.12. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"600 lbf·ft|the unit may be lbf·in, not lbf·ft", "70 lbf·in|the unit may be N·m, not lbf·in",
        "50 lbf·in|the unit may be lbf·ft, not lbf·in", "7 N·m|the unit may be kgf·m, not N·m", "560 N·m|the unit may be "
            + "lbf·in, not N·m", "600 N·m|the decimal point may be one place too far right",
        "6.5 N·m|the decimal point may be one place too far left", "600 N·m|the unit may be kgf·cm, not N·m",
        "32 N·m|the unit may be lbf·ft, not N·m", "70 lbf·ft|the unit may be N·m, not lbf·ft",
        "60 kgf·m|the unit may be N·m, not kgf·m"})
    void aUnitsFactorIsNamed(String torque, String slip) {
        var verdict = judged(torque, "M10", "10.9");
        assertTrue(verdict.isSlip() && !verdict.isUsual());
        assertTrue(verdict.slips().stream().anyMatch(found -> found.words().equals(slip)), verdict.slips().toString());
        assertTrue(verdict.words().endsWith("and it looks off by a unit's factor"), verdict.words());
        var sentence = Character.toUpperCase(slip.charAt(0)) + slip.substring(1);
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.startsWith(sentence) && reason.contains("a guess")),
                verdict.reasons().toString());
    }

    @Test
    void aSlipSaysHowMuchItWouldBe() {
        var slip = judged("70 lbf·in", "M10", "10.9").slips().stream().filter(found -> found.words().contains("N·m"))
                .findFirst().orElseThrow();
        assertEquals(8.850745791327185, slip.factor(), 1e-12);
        assertEquals(judged("70 N·m", "M10", "10.9").load().shareOfProof(), slip.shareOfProof(), 1e-12);
    }

    @Test
    void theLikeliestSlipComesFirst() {
        var slips = judged("60 lbf·in", "M10", "10.9").slips();
        assertEquals("the unit may be N·m, not lbf·in", slips.get(0).words());
        assertTrue(slips.size() > 1);
        var near = judged("5.6 N·m", "M10", "10.9").slips();
        assertEquals(List.of("the decimal point may be one place too far left", "the unit may be kgf·m, not N·m"),
                near.stream().map(Slip::words).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 N·m", "20000 N·m"})
    void whatNoReadingMakesUsualIsNoSlip(String torque) {
        var verdict = judged(torque, "M10", "10.9");
        assertFalse(verdict.isSlip(), verdict.slips().toString());
        assertEquals(verdict.place().words(), verdict.words());
    }

    @Test
    void aboveProofSaysWhatHappens() {
        assertTrue(judged("90 N·m", "M10", "10.9").reasons().toString().contains("stretch for good"));
        assertTrue(judged("120 N·m", "M10", "10.9").reasons().toString().contains("would break"));
        assertTrue(judged("20 N·m", "M10", "10.9").reasons().toString().contains("the maker's figure stands"));
    }

    @Test
    void aSlipperyBoltIsWarnedOfOnlyWhereFrictionIsNotKnown() {
        var unknown = judged("52 N·m", "M10", "8.8");
        assertTrue(unknown.isUsual());
        assertTrue(unknown.slippery().shareOfProof() > 1 && unknown.rough().shareOfProof() < unknown.load().shareOfProof());
        assertTrue(unknown.reasons().toString().contains("If it is as slippery as friction 0.08"), unknown.reasons() + "");
        var known = judge("M10", "8.8", FrictionRange.given(Friction.both(0.12))).judge(StatedTorque.parse("52 N·m"));
        assertFalse(known.reasons().toString().contains("slippery"));
        assertEquals(known.slippery(), known.rough());
        assertFalse(judged("30 N·m", "M10", "8.8").reasons().toString().contains("slippery"));
    }

    @Test
    void frictionMovesThePlace() {
        var dry = judge("M10", "8.8", FrictionRange.given(Friction.both(0.2)));
        var oiled = judge("M10", "8.8", FrictionRange.given(Friction.both(0.08)));
        assertEquals(Place.USUAL, dry.judge(StatedTorque.parse("60 N·m")).place());
        assertEquals(Place.ABOVE_PROOF, oiled.judge(StatedTorque.parse("60 N·m")).place());
    }

    @Test
    void theUsualIsSaidAsCalculatedTorques() {
        var verdict = judge("M10", "8.8", FrictionRange.given(Friction.both(0.12))).judge(StatedTorque.parse("45 N·m"));
        var joint = Joint.of(BoltThread.parse("M10"), PropertyClass.parse("8.8"), Friction.both(0.12));
        assertEquals(joint.torqueAtProof(0.5), verdict.usualFrom().in(MeasureUnits.NEWTON_METRE), 1e-12);
        assertEquals(joint.torqueAtProof(1), verdict.usualTo().in(MeasureUnits.NEWTON_METRE), 1e-12);
        assertTrue(verdict.usualTo().toString().contains("calculated, not the maker's"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"40 N·m then 90 °|40 N·m|HIGH_FOR_SNUG", "20 N·m then 90 °|20 N·m|USUAL",
        "10 N·m then 20 N·m then 90 ° then 90 °|20 N·m|USUAL", "2 N·m then 90 °|2 N·m|BELOW",
        "80 N·m then 90 °|80 N·m|ABOVE_PROOF", "20 N·m then 90 ° then 60 N·m|20 N·m|USUAL"})
    void withAnAngleOnlyTheSnugTorqueIsJudged(String text, String snug, Place place) {
        var verdict = judge("M10", "8.8", FrictionRange.given(Friction.both(0.12))).judge(stages(text));
        assertEquals(snug, verdict.judged().toString());
        assertEquals(place, verdict.place());
        assertTrue(verdict.snug());
        assertTrue(verdict.notJudged().get(0).startsWith("what the angle adds: an angle has no torque"));
        assertEquals(place == Place.HIGH_FOR_SNUG, verdict.reasons().toString().contains("belong together"));
        assertTrue(verdict.reasons().get(0).contains("before an angle"));
    }

    @Test
    void stagesWithoutAnAngleAreJudgedByTheHighest() {
        var verdict = judge("M10", "8.8", FrictionRange.given(Friction.both(0.12)))
                .judge(stages("20 N·m then 45 N·m then 30 N·m"));
        assertEquals("45 N·m", verdict.judged().toString());
        assertFalse(verdict.snug());
        assertFalse(verdict.notJudged().toString().contains("angle adds"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"90 °", "90 ° then 45 N·m"})
    void anAngleAloneIsNotJudged(String text) {
        var judge = judge("M10", "8.8", FrictionRange.given(Friction.both(0.12)));
        var stages = stages(text);
        var message = assertThrows(IllegalArgumentException.class, () -> judge.judge(stages)).getMessage();
        assertTrue(message.startsWith("An angle alone cannot be judged"), message);
    }

    @ParameterizedTest
    @CsvSource({"90, 90", "90 °, 90", "90 deg, 90", "1 turn, 360", "'22,5', 22.5"})
    void anglesAreRead(String text, double degrees) {
        assertEquals(degrees, ByAngle.parse(text).angle().in(MeasureUnits.DEGREE).doubleValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-90 °", "1081", "45 N·m", "", "right", "4 turns"})
    void whatIsNoAngleIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> ByAngle.parse(text));
    }

    @Test
    void aTorqueIsNoAngle() {
        var torque = Quantity.parse("45 N·m");
        assertThrows(IllegalArgumentException.class, () -> new ByAngle(torque));
    }

    @Test
    void whatWasNotJudgedIsSaid() {
        var right = judged("45 N·m", "M10", "8.8").notJudged().toString();
        for (var words : List.of("aluminium", "insert", "engage", "soft joint", "whether the thread is left-hand")) {
            assertTrue(right.contains(words), words);
        }
        assertTrue(judged("45 N·m", "M10 LH", "8.8").notJudged().toString().contains("tightens anticlockwise"));
    }

    @Test
    void whatWasAssumedIsSaid() {
        var assumed = judged("45 N·m", "M10", "8.8").assumptions().toString();
        assertTrue(assumed.contains("friction 0.12 assumed, since none was given"), assumed);
        assertTrue(assumed.contains("ISO 898-1"), assumed);
    }

    @Test
    void aGivenBearingRingIsJudgedWith() {
        var thread = ThreadDesignation.parse("M10");
        var friction = FrictionRange.given(Friction.both(0.12));
        var flange = new Judge(thread, PropertyClass.parse("8.8"), friction, Bearing.given(20, 11));
        var stated = StatedTorque.parse("56 N·m");
        assertEquals(Place.USUAL, flange.judge(stated).place());
        assertEquals(Place.ABOVE_PROOF, judge("M10", "8.8", friction).judge(stated).place());
    }
}
