// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.StatedTorque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AdapterTest {

    private static double set(String torque, double length, double offset, double angle) {
        return new WrenchSetting(StatedTorque.parse(torque), new Adapter(length, offset, angle)).setting()
                .in(MeasureUnits.NEWTON_METRE);
    }

    /** Published: 80 N·m, 40 and 5 cm, 0° and 90° (agentcalc.com); 50 N·m, 30 to 45 (bit1024). */
    @ParameterizedTest
    @CsvSource({"80 N·m, 400, 50, 0, 71.1", "80 N·m, 400, 50, 90, 80", "50 N·m, 300, 150, 0, 33.33"})
    void publishedExamplesComeOut(String torque, double length, double offset, double angle, double printed) {
        assertEquals(printed, set(torque, length, offset, angle), printed == 71.1 ? 0.05 : 0.005);
    }

    /** Published (a forum): 100 lbf·ft, 12 in, 9 in: 57.14 lbf·ft. */
    @Test
    void anInchExampleComesOut() {
        var setting = new WrenchSetting(StatedTorque.parse("100 lbf·ft"), new Adapter(12 * 25.4, 9 * 25.4, 0)).setting();
        assertEquals(57.14, setting.in(MeasureUnits.POUND_FOOT), 0.005);
    }

    /** Computed: 100 N·m, 300 mm, 50 mm. */
    @ParameterizedTest
    @CsvSource({"0, 85.714", "45, 89.457", "60, 92.308", "90, 100", "180, 120", "-45, 89.457", "-180, 120"})
    void theAngleCounts(double angle, double computed) {
        assertEquals(computed, set("100 N·m", 300, 50, angle), 5.1e-4);
    }

    /** A published trap: one page states that 90° has most effect. It has none at all. */
    @Test
    void squareToTheWrenchChangesNothing() {
        assertEquals(1, new Adapter(400, 75, 90).factor());
        assertEquals(1, new Adapter(400, 75, -90).factor());
        assertEquals(1, new Adapter(400, 0, 0).factor());
    }

    @Test
    void theSettingRisesWithTheAngleAndFallsWithTheOffset() {
        var random = new Random(3);
        for (int i = 0; i < 500; i++) {
            double length = 200 + random.nextInt(600);
            double offset = 10 + random.nextInt(80);
            double angle = random.nextInt(170);
            assertTrue(new Adapter(length, offset, angle + 5).factor() > new Adapter(length, offset, angle).factor());
            if (angle < 85) {
                assertTrue(new Adapter(length, offset + 5, angle).factor() < new Adapter(length, offset, angle).factor());
            }
            assertEquals(new Adapter(length, offset, angle).factor(), new Adapter(3 * length, 3 * offset, angle).factor(),
                    1e-12);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0|50|0|wrench length", "-400|50|0|wrench length", "5001|50|0|wrench length",
        "400|-1|0|adapter length", "400|2001|0|adapter length", "400|50|181|adapter angle", "400|50|-181|adapter angle",
        "NaN|50|0|wrench length", "400|NaN|0|adapter length", "400|50|NaN|adapter angle", "300|151|180|more than half",
        "300|300|180|more than half", "300|400|150|more than half"})
    void whatCannotBeIsRefused(double length, double offset, double angle, String wrong) {
        var message = assertThrows(IllegalArgumentException.class, () -> new Adapter(length, offset, angle)).getMessage();
        assertTrue(message.contains(wrong) && message.endsWith("."), message);
    }

    @Test
    void theLimitsAreTaken() {
        assertEquals(2, new Adapter(300, 150, 180).factor(), 1e-12);
        assertEquals(1, new Adapter(1, 0, 180).factor());
        assertEquals(5.0 / 7, new Adapter(5000, 2000, 0).factor(), 1e-12);
    }

    @Test
    void theFiguresAreRead() {
        assertEquals(new Adapter(400, 50.5, 45), Adapter.read("400", "50,5", "45"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Adapter.read("40cm", "5", "0")).getMessage()
                .contains("'40cm' is no number for the wrench length in mm"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Adapter.read("400", "x", "0")).getMessage()
                .contains("adapter length"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Adapter.read("400", "50", "square")).getMessage()
                .contains("adapter angle"));
    }

    @Test
    void theBandLiesAboutTheTorqueOnTheFastener() {
        var setting = new WrenchSetting(StatedTorque.parse("100 N·m"), new Adapter(300, 50, 0));
        assertEquals(0.04, setting.deviation().share());
        assertEquals(96, setting.band().least().in(MeasureUnits.NEWTON_METRE), 1e-9);
        assertEquals(104, setting.band().most().in(MeasureUnits.NEWTON_METRE), 1e-9);
        assertTrue(setting.assumptions().toString().contains("middle of the grip"));
    }

    @Test
    void aSmallSettingHasTheWiderBand() {
        var setting = new WrenchSetting(StatedTorque.parse("10.5 N·m"), new Adapter(300, 50, 0));
        assertEquals(0.06, setting.deviation().share());
    }
}
