// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Calculated;
import org.benchlore.torque.StatedTorque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrenchRackTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static Wrench wrench(String name, String lowest, String highest, LocalDate due) {
        return new Wrench(name, WrenchKind.SETTING, StatedTorque.parse(lowest), StatedTorque.parse(highest),
                Optional.ofNullable(due));
    }

    private static final WrenchRack RACK = new WrenchRack(List.of(
            wrench("large", "60 N·m", "300 N·m", TODAY.plusDays(90)),
            wrench("small", "5 N·m", "25 N·m", TODAY.plusDays(30)),
            wrench("middle", "20 N·m", "100 N·m", TODAY),
            wrench("old", "20 N·m", "100 N·m", TODAY.minusDays(1)),
            wrench("unlabelled", "20 N·m", "100 N·m", null)));

    private static List<String> fitting(double torque) {
        return RACK.choose(torque, TODAY).stream().filter(Choice::fits).map(choice -> choice.wrench().name()).toList();
    }

    /** The range starts at the lowest marked value (ISO 6789-1:2017, 5.1.3; norbar.com). */
    @ParameterizedTest
    @CsvSource({"4.99, ''", "5, small", "19.9, small", "20, small;middle", "25, small;middle", "25.1, middle", "60, middle;large",
        "100, middle;large", "100.1, large", "300, large", "300.1, ''"})
    void theFinestThatFitsComesFirst(double torque, String names) {
        assertEquals(names, String.join(";", fitting(torque)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"large|BELOW_LOWEST_MARK|too large, its lowest marked value is 60 N·m",
        "small|ABOVE_HIGHEST|too small, it ends at 25 N·m", "middle|FITS|fits, within ± 4 %, calibrated until 2026-11-25",
        "old|CALIBRATION_OVER|its calibration ended on 2026-11-24",
        "unlabelled|CALIBRATION_NOT_RECORDED|no calibration is recorded"})
    void whyAWrenchIsNotTakenIsSaid(String name, Choice.Fit fit, String words) {
        var choice = RACK.choose(45, TODAY).stream().filter(each -> each.wrench().name().equals(name)).findFirst()
                .orElseThrow();
        assertEquals(fit, choice.fit());
        assertTrue(choice.words().startsWith(name + ": ") && choice.words().contains(words), choice.words());
        assertTrue(choice.words().endsWith("."), choice.words());
    }

    @Test
    void everyWrenchIsListedTheUsableFirst() {
        var names = RACK.choose(45, TODAY).stream().map(choice -> choice.wrench().name()).toList();
        assertEquals(List.of("middle", "unlabelled", "old", "large", "small"), names);
    }

    @Test
    void likeWrenchesAreListedByName() {
        var rack = new WrenchRack(List.of(wrench("b", "20 N·m", "100 N·m", TODAY), wrench("a", "20 N·m", "100 N·m", TODAY)));
        assertEquals("a", rack.choose(45, TODAY).get(0).wrench().name());
    }

    @Test
    void aSettingIsChosenFor() {
        var setting = Calculated.of(33, MeasureUnits.POUND_FOOT);
        assertEquals(RACK.choose(setting.in(MeasureUnits.NEWTON_METRE), TODAY), RACK.choose(setting, TODAY));
    }

    @Test
    void theOrderOfTheRangeMatters() {
        var message = assertThrows(IllegalArgumentException.class, () -> wrench("w", "100 N·m", "20 N·m", TODAY)).getMessage();
        assertTrue(message.contains("lowest marked value first"), message);
        assertThrows(IllegalArgumentException.class, () -> wrench("w", "20 N·m", "20 N·m", TODAY));
    }

    /** From memory: ISO 6789-1:2017: ± 6 % to a highest torque of 10 N·m and for screwdrivers, ± 4 % above. */
    @ParameterizedTest
    @CsvSource({"SETTING, 10, 0.06", "SETTING, 10.1, 0.04", "INDICATING, 300, 0.04", "INDICATING, 5, 0.06",
        "SCREWDRIVER, 20, 0.06"})
    void thePermissibleDeviationFollowsTheTool(WrenchKind kind, double highest, double share) {
        assertEquals(share, Deviation.of(kind, highest).share());
    }

    @Test
    void aWrenchHasTheDeviationOfItsHighestTorque() {
        assertEquals(0.04, wrench("w", "5 N·m", "25 N·m", TODAY).deviation().share());
        assertEquals(0.06, wrench("w", "1 N·m", "10 N·m", TODAY).deviation().share());
        var band = new Deviation(0.04).around(50);
        assertEquals(48, band.least().in(MeasureUnits.NEWTON_METRE), 1e-9);
        assertEquals(52, band.most().in(MeasureUnits.NEWTON_METRE), 1e-9);
    }

    /** Published: norbar.com, mobiletestncal.com.au: 12 months or 5,000 uses where the shop has no procedure of its own. */
    @Test
    void theUsualIntervalIsAYearOrFiveThousandUses() {
        assertEquals(LocalDate.of(2027, 11, 25), CalibrationRule.DEFAULT.due(TODAY));
        assertFalse(CalibrationRule.DEFAULT.isWornOut(4999));
        assertTrue(CalibrationRule.DEFAULT.isWornOut(5000));
        assertEquals(LocalDate.of(2026, 2, 28), new CalibrationRule(6, 1000).due(LocalDate.of(2025, 8, 31)));
    }

    @ParameterizedTest
    @CsvSource({"0, 5000", "61, 5000", "12, 0", "12, 100001"})
    void aRuleThatCannotBeIsRefused(int months, int uses) {
        assertThrows(IllegalArgumentException.class, () -> new CalibrationRule(months, uses));
    }
}
