// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

import org.benchlore.plan.adding.Assumptions;
import org.benchlore.plan.adding.Figure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTextTest {

    private static final Assumptions NOTHING = new Assumptions(Map.of());

    @ParameterizedTest
    @CsvSource({"EXTRA,350,350", "EXTRA,' 7.5 ',7.5", "EXTRA,'7,5',7.5", "EXTRA,0,0", "COMES_BACK,100,100", "DAYS_OUT,140,140"})
    void aNumberIsTakenWithPointOrComma(Figure figure, String typed, BigDecimal value) {
        assertEquals(new FigureText(Optional.of(value), Optional.empty()), FigureText.read(figure, NOTHING, typed));
    }

    @ParameterizedTest
    @CsvSource({"EXTRA,much,is no number", "EXTRA,1.234.50,is no number", "EXTRA,-1,0 or more", "COMES_BACK,101,from 0 to 100",
        "COMES_BACK,-1,from 0 to 100"})
    void whatMakesNoSenseIsRefusedWithWhatToGive(Figure figure, String typed, String sentence) {
        var read = FigureText.read(figure, NOTHING, typed);
        assertTrue(read.value().isEmpty() && read.problem().orElseThrow().contains(sentence), read::toString);
    }
}
