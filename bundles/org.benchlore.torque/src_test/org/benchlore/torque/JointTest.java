// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.benchlore.measure.MeasureUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JointTest {

    private static Joint joint(String thread, String propertyClass, double friction) {
        return Joint.of(BoltThread.parse(thread), PropertyClass.parse(propertyClass), Friction.both(friction));
    }

    private static double torque(Joint joint, double use) {
        return joint.tighten(use).torque().in(MeasureUnits.NEWTON_METRE);
    }

    @Test
    void reverseUndoesForwardForEveryThreadAndClass() {
        var random = new Random(5);
        int tried = 0;
        for (var thread : new ThreadTable().all()) {
            for (var name : thread.series().isInch() ? List.of("2", "5", "8") : List.of("4.6", "8.8", "10.9", "70")) {
                var joint = Joint.of(thread, PropertyClass.parse(name),
                        new Friction(0.06 + random.nextDouble() * 0.3, 0.06 + random.nextDouble() * 0.3));
                double use = 0.2 + random.nextDouble() * 0.8;
                var load = joint.load(torque(joint, use));
                assertEquals(use, load.shareOfYield(), 1e-12);
                assertEquals(joint.tighten(use).preload().in(MeasureUnits.NEWTON), load.preload(), load.preload() * 1e-12);
                tried++;
            }
        }
        assertTrue(tried > 250, tried + "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"M5", "M8", "M10×1.25", "M16", "M24×2"})
    void torqueRisesWithFriction(String thread) {
        for (double friction = 0.05; friction < 0.45; friction += 0.01) {
            var joint = joint(thread, "8.8", friction);
            var rougher = joint(thread, "8.8", friction + 0.01);
            assertTrue(rougher.form().torque(1000) > joint.form().torque(1000));
            assertTrue(rougher.tighten(0.9).preload().in(MeasureUnits.NEWTON)
                    < joint.tighten(0.9).preload().in(MeasureUnits.NEWTON));
        }
    }

    /** At a fixed share of yield more friction means more torque too, up to 0.3 and beyond. */
    @Test
    void torqueAtAShareOfYieldRisesWithFriction() {
        for (double friction = 0.05; friction < 0.3; friction += 0.01) {
            assertTrue(torque(joint("M12", "8.8", friction + 0.01), 0.9) > torque(joint("M12", "8.8", friction), 0.9));
        }
    }

    @Test
    void torqueRisesWithClassAndSizeAndUse() {
        var classes = List.of("4.6", "4.8", "5.8", "6.8", "8.8", "10.9", "12.9");
        for (int i = 1; i < classes.size(); i++) {
            assertTrue(torque(joint("M12", classes.get(i), 0.12), 0.9) > torque(joint("M12", classes.get(i - 1), 0.12), 0.9));
        }
        var sizes = List.of("M3", "M4", "M5", "M6", "M7", "M8", "M10", "M12", "M14", "M16", "M18", "M20", "M22", "M24",
                "M27", "M30", "M33", "M36", "M39");
        for (int i = 1; i < sizes.size(); i++) {
            assertTrue(torque(joint(sizes.get(i), "10.9", 0.12), 0.9) > torque(joint(sizes.get(i - 1), "10.9", 0.12), 0.9),
                    sizes.get(i));
        }
        assertTrue(torque(joint("M12", "8.8", 0.12), 0.91) > torque(joint("M12", "8.8", 0.12), 0.9));
    }

    /** Every length twice as large: eight times the torque, four times the preload. */
    @Test
    void torqueScalesWithTheCube() {
        var one = scaled(1);
        var twice = scaled(2);
        assertEquals(8 * torque(one, 0.9), torque(twice, 0.9), 1e-9);
        assertEquals(4 * one.tighten(0.9).preload().in(MeasureUnits.NEWTON),
                twice.tighten(0.9).preload().in(MeasureUnits.NEWTON), 1e-6);
    }

    private static Joint scaled(double by) {
        var thread = new BoltThread("scaled", ThreadSeries.METRIC_FINE, 8 * by, by);
        return new Joint(PropertyClass.parse("10.9"),
                new LongForm(thread, Friction.both(0.12), Bearing.given(12 * by, 9 * by)));
    }

    @Test
    void loadIsInProportionToTorque() {
        var joint = joint("M10", "8.8", 0.12);
        var one = joint.load(20);
        var two = joint.load(40);
        assertEquals(2 * one.preload(), two.preload(), 1e-9);
        assertEquals(2 * one.shareOfProof(), two.shareOfProof(), 1e-12);
        assertEquals(2 * one.shareOfYield(), two.shareOfYield(), 1e-12);
        assertEquals(2 * one.shareOfTensile(), two.shareOfTensile(), 1e-12);
    }

    /** Proof over tensile load of M10, 8.8: 33.7 of 46.4 kN (published loads). */
    @Test
    void theTorqueAtProofLoadsToProof() {
        var joint = joint("M10", "8.8", 0.12);
        var load = joint.load(joint.torqueAtProof(1));
        assertEquals(1, load.shareOfProof(), 1e-12);
        assertEquals(33_700, load.preload(), 100);
        assertEquals(580.0 / 800, load.shareOfTensile(), 1e-12);
        assertEquals(joint.torqueAtProof(1) / 2, joint.torqueAtProof(0.5), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.09, 1.01, -1, 90, Double.NaN})
    void aShareOfYieldThatCannotBeIsRefused(double use) {
        var joint = joint("M10", "8.8", 0.12);
        var message = assertThrows(IllegalArgumentException.class, () -> joint.tighten(use)).getMessage();
        assertTrue(message.contains("share of yield") && message.endsWith("write for example 0.9."), message);
    }

    @Test
    void aShareOfYieldIsRead() {
        assertEquals(0.75, Joint.readUse("0,75"));
        assertThrows(IllegalArgumentException.class, () -> Joint.readUse("75"));
    }

    @Test
    void itSaysWhatItAssumes() {
        var assumed = joint("M10", "70", 0.2).assumptions().toString();
        assertTrue(assumed.contains("bearing ring 14.63 mm over a hole of 11 mm (ISO 4014, ISO 273 medium)"), assumed);
        assertTrue(assumed.contains("minimum strengths of ISO 3506-1: proof 450, yield 450, tensile 700 MPa"), assumed);
        assertTrue(assumed.contains("no proof stress") && assumed.contains("room temperature"), assumed);
        assertEquals(3, joint("M10", "8.8", 0.2).assumptions().size());
    }

    @Test
    void aClassThatDoesNotExistForTheThreadIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> joint("M20", "9.8", 0.12));
    }

    /** dw min of ISO 4014 and medium holes of ISO 273, from memory. */
    @ParameterizedTest
    @CsvSource({"M5, 6.88, 5.5", "M6, 8.88, 6.6", "M8, 11.63, 9", "M10, 14.63, 11", "M12, 16.63, 13.5", "M14, 19.64, 15.5",
        "M16, 22.49, 17.5", "M18, 25.34, 20", "M20, 28.19, 22", "M22, 31.71, 24", "M24, 33.61, 26", "M10×1, 14.63, 11"})
    void hexagonHeadsComeFromTheTable(String thread, double outer, double inner) {
        var bearing = Bearing.hexagon(BoltThread.parse(thread));
        assertEquals(outer, bearing.outer());
        assertEquals(inner, bearing.inner());
        assertEquals((outer + inner) / 2, bearing.meanDiameter(), 1e-12);
    }

    /** Shigley, 8-26 and 8-27: mean collar diameter 1.25 d where no table stands. */
    @ParameterizedTest
    @ValueSource(strings = {"M3", "M7", "M30", "3/8-16", "1/2-20"})
    void otherHeadsRubAtTheTextbooksDiameter(String name) {
        var thread = BoltThread.parse(name);
        var bearing = Bearing.hexagon(thread);
        assertEquals(1.25 * thread.diameter(), bearing.meanDiameter(), 1e-12);
        assertTrue(bearing.words().contains("Shigley"));
    }

    @ParameterizedTest
    @CsvSource({"'14.63,11', 14.63, 11", "'20 13', 20, 13", "'20/13.5', 20, 13.5", "' 20 ; 13 ', 20, 13"})
    void bearingRingsAreRead(String text, double outer, double inner) {
        assertEquals(Bearing.given(outer, inner), Bearing.parse(text));
        assertTrue(Bearing.parse(text).words().endsWith("as given"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "14", "11,14.63", "14,14", "14,0", "14,-3", "a,b", "1,2,3", "9999,11", "1e9,3"})
    void aRingThatCannotBeIsRefused(String text) {
        var message = assertThrows(IllegalArgumentException.class, () -> Bearing.parse(text)).getMessage();
        assertTrue(message.contains("for example") && message.endsWith("."), message);
    }

    @Test
    void aLargerRingNeedsMoreTorque() {
        var thread = BoltThread.parse("M10");
        var friction = Friction.both(0.12);
        assertTrue(new LongForm(thread, friction, Bearing.given(20, 11)).torque(1000)
                > new LongForm(thread, friction, Bearing.hexagon(thread)).torque(1000));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.039, 0.51, -0.1, 12, Double.NaN})
    void frictionOutsideWhatCanBeIsRefused(double friction) {
        assertThrows(IllegalArgumentException.class, () -> Friction.both(friction));
        assertThrows(IllegalArgumentException.class, () -> new Friction(0.12, friction));
        assertThrows(IllegalArgumentException.class, () -> new Friction(friction, 0.12));
    }

    @Test
    void frictionIsSaidInWords() {
        assertEquals("friction 0.12", Friction.both(0.12).toString());
        assertEquals("friction 0.12 in the thread and 0.1 under the head", new Friction(0.12, 0.1).toString());
        assertEquals(0.14, Friction.read("friction", " 0,14 "));
        assertThrows(IllegalArgumentException.class, () -> Friction.read("friction", "dry"));
    }

    /** Ranges of VDI 2230 friction classes (amesweb.info): B 0.08 to 0.16; A ends at 0.10, D at 0.35. */
    @Test
    void whereFrictionIsNotGivenARangeIsReckonedWith() {
        var steel = FrictionRange.usual(PropertyClass.parse("8.8"));
        assertEquals(List.of(0.08, 0.12, 0.16), List.of(steel.least().head(), steel.middle().head(), steel.most().head()));
        var stainless = FrictionRange.usual(PropertyClass.parse("70"));
        assertEquals(List.of(0.1, 0.35), List.of(stainless.least().thread(), stainless.most().thread()));
        assertTrue(steel.words().contains("assumed, since none was given") && !steel.isGiven());
        var given = FrictionRange.given(Friction.both(0.1));
        assertTrue(given.isGiven() && given.words().equals("friction 0.1, as given"));
        assertNotEquals(steel.words(), stainless.words());
        assertThrows(IllegalArgumentException.class, () -> new FrictionRange(steel.most(), steel.middle(), steel.least(), ""));
        assertThrows(IllegalArgumentException.class, () -> new FrictionRange(steel.least(), steel.most(), steel.middle(), ""));
    }
}
