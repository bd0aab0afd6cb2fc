// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.benchlore.page.TestBook.MAKE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Fastening;
import org.benchlore.model.Stage;
import org.benchlore.model.StageKind;
import org.benchlore.model.StatedBy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Torques, limits and times in words. */
class FiguresTest {

    private static Quantity quantity(String text) {
        return text == null ? null : Quantity.parse(text);
    }

    private static Stage stage(StageKind kind, String torque, String angle, String wait) {
        var stage = MAKE.createStage();
        stage.setKind(kind);
        stage.setTorque(quantity(torque));
        stage.setAngle(quantity(angle));
        stage.setWait(quantity(wait));
        return stage;
    }

    private static Fastening of(Stage... stages) {
        var fastening = MAKE.createFastening();
        fastening.getStages().addAll(List.of(stages));
        return fastening;
    }

    @Test
    void stagesAreReadInTheirOrder() {
        assertEquals("20 N·m, then wait 10 min, then loosen 180 °, then 60 N·m, then 90 °",
                Fastenings.stages(of(stage(StageKind.TORQUE, "20 N·m", null, null),
                        stage(StageKind.WAIT, null, null, "10 min"), stage(StageKind.LOOSEN, null, "180 °", null),
                        stage(StageKind.TORQUE, "60 N·m", null, null), stage(StageKind.ANGLE, null, "90 °", null))));
    }

    @ParameterizedTest
    @CsvSource({"TORQUE,torque not recorded", "ANGLE,angle not recorded", "LOOSEN,loosen",
        "WAIT,wait (time not recorded)", "NOT_RECORDED,stage not recorded"})
    void aStageWithoutItsFigureSaysSo(StageKind kind, String words) {
        assertEquals(words, Fastenings.stages(of(stage(kind, null, null, null))));
    }

    @Test
    void aFasteningWithoutStagesSaysThatItsTorqueIsMissing() {
        assertEquals("torque not recorded", Fastenings.stages(of()));
    }

    @ParameterizedTest
    @CsvSource({"2.10 mm,1.80 mm,2.40 mm,,'nominal 2.10 mm, 1.80 mm to 2.40 mm'", ",,0.5 mm,,at most 0.5 mm",
        ",18 bar,,,at least 18 bar", "2.60 mm,,,2.35 mm,'nominal 2.60 mm, renew beyond 2.35 mm'",
        ",,,,limits not recorded"})
    void limitsSayOnlyWhatIsKnown(String nominal, String low, String high, String wear, String words) {
        var measurement = MAKE.createMeasurement();
        measurement.setNominal(quantity(nominal));
        measurement.setLow(quantity(low));
        measurement.setHigh(quantity(high));
        measurement.setWearLimit(quantity(wear));
        assertEquals(words, Measurements.limits(measurement));
    }

    @ParameterizedTest
    @CsvSource({"MAKER,torque stated by the maker", "SHOP,torque stated by the shop",
        "CALCULATED,'torque calculated, not the maker''s'", "NOT_RECORDED,who states the torque: not recorded"})
    void aCalculatedFigureNeverReadsLikeAStatedOne(StatedBy who, String words) {
        assertEquals(words, Stated.by("torque", who));
    }

    @ParameterizedTest
    @CsvSource({"35 min,1 h,'35 min usually, 1 h when it goes badly'", "35 min,,35 min usually",
        ",1 h,1 h when it goes badly", ",,''"})
    void aTimeSaysTheUsualAndTheBad(String usual, String bad, String words) {
        assertEquals(words, Works.time(quantity(usual), quantity(bad)));
    }
}
