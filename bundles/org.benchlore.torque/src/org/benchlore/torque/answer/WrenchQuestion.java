// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Figures;
import org.benchlore.torque.StatedTorque;
import org.benchlore.torque.wrench.Adapter;
import org.benchlore.torque.wrench.Choice;
import org.benchlore.torque.wrench.WrenchRack;
import org.benchlore.torque.wrench.WrenchSetting;

/**
 * What is a wrench set to, and which wrench of the shop may be used?
 *
 * @param torque wanted on the fastener, number and unit
 * @param length middle of the grip to the drive, mm; blank together with the offset where there is no adapter
 * @param offset drive to the fastener, mm
 * @param angle between wrench and adapter, degrees; blank for 0, in line
 * @param rack the shop's wrenches, empty if they are not known
 * @param today the day of use
 */
public record WrenchQuestion(String torque, String length, String offset, String angle, Optional<WrenchRack> rack,
        LocalDate today) {

    private static final double TEN_THOUSANDTHS = 10_000;
    private static final String LONG_ENOUGH = "1000";

    /**
     * Answers it; the answer is good if a wrench fits, or if none are known.
     *
     * @throws WrongInput if an input cannot be used
     */
    public Answer answer() {
        var wanted = WrongInput.at(Field.TORQUE, () -> StatedTorque.parse(torque));
        boolean isPlain = WrongInput.isBlank(length) && WrongInput.isBlank(offset) && WrongInput.isBlank(angle);
        var setting = new WrenchSetting(wanted, isPlain ? Adapter.read(LONG_ENOUGH, "0", "0") : adapter());
        var writer = new AnswerWriter();
        writer.row("On the fastener", wanted.toString());
        writer.add("wanted", wanted.toString());
        writer.add("wantedNewtonMetres", wanted.quantity().in(MeasureUnits.NEWTON_METRE));
        if (isPlain) {
            writer.main("Set the wrench to", wanted + ", as stated: no adapter");
        } else {
            writer.main("Set the wrench to", AnswerWriter.words(setting.setting()));
            writer.row("Factor", Figures.plain(Math.round(setting.adapter().factor() * TEN_THOUSANDTHS) / TEN_THOUSANDTHS));
        }
        writer.add("setting", AnswerWriter.calculated(setting.setting(), MeasureUnits.NEWTON_METRE));
        writer.add("factor", setting.adapter().factor());
        band(writer, setting);
        var choices = rack.map(shop -> shop.choose(setting.setting(), today)).orElse(List.of());
        rack.ifPresent(shop -> choices(writer, choices));
        writer.assumed(setting.assumptions());
        return writer.done(rack.isEmpty() || choices.stream().anyMatch(Choice::fits));
    }

    private Adapter adapter() {
        double along = WrongInput.at(Field.LENGTH,
                () -> Adapter.readLength(given(length, "wrench length", "400")));
        double across = WrongInput.at(Field.OFFSET, () -> Adapter.readOffset(given(offset, "adapter length", "50")));
        double turned = WrongInput.at(Field.ADAPTER_ANGLE,
                () -> Adapter.readAngle(WrongInput.isBlank(angle) ? "0" : angle));
        return WrongInput.at(Field.OFFSET, () -> new Adapter(along, across, turned));
    }

    private static String given(String text, String what, String example) {
        if (WrongInput.isBlank(text)) {
            throw new IllegalArgumentException("No " + what + " is given: write it in mm, for example " + example + ".");
        }
        return text;
    }

    private static void band(AnswerWriter writer, WrenchSetting setting) {
        var share = setting.deviation().share();
        writer.row("Deviation", "± " + Figures.percent(share)
                + " is permissible for such a wrench (ISO 6789-1, from memory):");
        writer.torque("  least", "least", setting.band().least());
        writer.torque("  most", "most", setting.band().most());
        writer.add("deviation", share);
    }

    private static void choices(AnswerWriter writer, List<Choice> choices) {
        writer.phrases("The shop's wrenches:", "wrenches", choices.isEmpty()
                ? List.of("none with a range of torque is recorded") : choices.stream().map(Choice::words).toList());
        writer.add("choices", choices.stream().map(WrenchQuestion::data).toList());
    }

    private static Map<String, Object> data(Choice choice) {
        var data = new LinkedHashMap<String, Object>();
        data.put("name", choice.wrench().name());
        data.put("fit", choice.fit().name());
        choice.wrench().due().ifPresent(due -> data.put("calibrationDue", due.toString()));
        return data;
    }
}
