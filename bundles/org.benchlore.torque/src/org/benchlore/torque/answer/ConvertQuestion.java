// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.MeasureUnit;
import org.benchlore.measure.MeasureUnits;
import org.benchlore.measure.Quantity;
import org.benchlore.torque.StatedTorque;

/**
 * How much is a torque in another unit?
 *
 * @param torque number and unit, such as {@code 80 ft-lb}
 * @param target the unit wanted; blank for every unit
 */
public record ConvertQuestion(String torque, String target) {

    private static final List<String> ASSUMED = List.of(
            "the torque is right as entered; converted by exact factors, shown rounded for setting a wrench");

    /**
     * Answers it.
     *
     * @throws WrongInput if an input cannot be used
     */
    public Answer answer() {
        var stated = WrongInput.at(Field.TORQUE, () -> StatedTorque.parse(torque));
        var writer = new AnswerWriter();
        if (WrongInput.isBlank(target)) {
            writer.headline(stated + " =");
            units().stream().filter(unit -> !unit.equals(stated.unit()))
                    .forEach(unit -> writer.main(unit.symbol(), shown(stated, unit).text()));
            writer.add("entered", stated.toString());
        } else {
            one(writer, stated, WrongInput.at(Field.TO_UNIT, () -> unit(target)));
        }
        writer.assumed(ASSUMED);
        return writer.done(true);
    }

    private static void one(AnswerWriter writer, StatedTorque stated, MeasureUnit to) {
        var shown = shown(stated, to);
        writer.headline(stated + " = "
                + (shown.text().equals(stated.toString()) ? Quantity.of(stated.number(), to) : shown));
        writer.add("entered", stated.toString());
        writer.add("shown", shown.text());
        writer.add("value", stated.quantity().in(to));
        writer.add("unit", to.symbol());
    }

    private static Quantity shown(StatedTorque stated, MeasureUnit unit) {
        return stated.quantity().to(unit);
    }

    /** The units of torque, the usual ones first. */
    public static List<MeasureUnit> units() {
        return MeasureUnits.of(Dimension.TORQUE);
    }

    private static MeasureUnit unit(String word) {
        return MeasureUnits.find(word).filter(found -> found.dimension() == Dimension.TORQUE).orElseThrow(() ->
                new IllegalArgumentException("'" + word + "' is no unit of torque known here: write one of "
                        + units().stream().map(MeasureUnit::symbol).collect(Collectors.joining(", ")) + "."));
    }
}
