// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.math.BigDecimal;
import java.util.Optional;

import org.benchlore.plan.adding.Assumptions;
import org.benchlore.plan.adding.Figure;
import org.eclipse.osgi.util.NLS;

/**
 * What was typed for a figure.
 *
 * @param value the number, if it is one that makes sense
 * @param problem what is wrong with it and what to do, if something is
 */
record FigureText(Optional<BigDecimal> value, Optional<String> problem) {

    /** Reads a number with a point or a comma. */
    static FigureText read(Figure figure, Assumptions assumptions, String typed) {
        try {
            var value = new BigDecimal(typed.strip().replace(',', '.'));
            assumptions.with(figure, value);
            return new FigureText(Optional.of(value), Optional.empty());
        } catch (NumberFormatException e) {
            return new FigureText(Optional.empty(), Optional.of(NLS.bind(Messages.noNumber, typed.strip())));
        } catch (IllegalArgumentException e) {
            return new FigureText(Optional.empty(), Optional.of(figure.form() == Figure.Form.OF_HUNDRED
                    ? Messages.ofHundred : Messages.notBelow));
        }
    }
}
