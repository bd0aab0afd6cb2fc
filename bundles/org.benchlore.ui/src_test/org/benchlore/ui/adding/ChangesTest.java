// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Map;

import org.benchlore.plan.adding.Figure;
import org.junit.jupiter.api.Test;

class ChangesTest {

    private static final Changes TWO = Changes.NONE.with("seal", Figure.EXTRA, BigDecimal.ONE)
            .with("seal", Figure.DAY_OUT, BigDecimal.TEN).with("ring", Figure.EXTRA, BigDecimal.TEN);

    @Test
    void theLastValueOfAFigureStands() {
        assertEquals(BigDecimal.TEN, TWO.with("seal", Figure.EXTRA, BigDecimal.TEN).of("seal").get(Figure.EXTRA));
    }

    @Test
    void oneFigureIsPutBackAndTheOthersStay() {
        assertEquals(Map.of(Figure.DAY_OUT, BigDecimal.TEN), TWO.without("seal", Figure.EXTRA).of("seal"));
    }

    @Test
    void allFiguresOfOneProposalArePutBack() {
        var left = TWO.without("seal");
        assertEquals(Map.of(), left.of("seal"));
        assertEquals(Map.of(Figure.EXTRA, BigDecimal.TEN), left.of("ring"));
    }
}
