// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.StatedTorque;
import org.benchlore.torque.sequence.Stages;
import org.benchlore.torque.sequence.TighteningSequence;

/**
 * In which order are fasteners tightened?
 *
 * @param layout {@code circle}, {@code grid} or {@code own}
 * @param size how many, rows and columns, or the order itself
 * @param stages percent each; blank for 30, 70, 100
 * @param torque final torque to give each stage's; may be blank
 */
public record SequenceQuestion(String layout, String size, String stages, String torque) {

    /**
     * The order.
     *
     * @throws WrongInput if an input cannot be used
     */
    public TighteningSequence sequence() {
        return WrongInput.at(Field.SIZE, () -> switch (layout) {
            case "circle" -> TighteningSequence.circle(size);
            case "grid" -> TighteningSequence.grid(size);
            case "own" -> TighteningSequence.own(size);
            default -> throw new WrongInput(Field.LAYOUT, "'" + layout
                    + "' is no way fasteners lie: write circle, grid or own, for example 'torque sequence circle 8'.");
        });
    }

    /**
     * The stages.
     *
     * @throws WrongInput if they cannot be used
     */
    public Stages stageList() {
        return WrongInput.isBlank(stages) ? Stages.USUAL : WrongInput.at(Field.STAGES, () -> Stages.parse(stages));
    }

    /**
     * Answers it.
     *
     * @throws WrongInput if an input cannot be used
     */
    public Answer answer() {
        var sequence = sequence();
        var chosen = stageList();
        var writer = new AnswerWriter();
        writer.headline("Tightening sequence, " + sequence.layout().words() + "; " + sequence.numbering());
        writer.main("Order", join(sequence.order()));
        writer.row("Loosening", join(sequence.loosening()));
        stages(writer, chosen);
        writer.row("Closing pass", sequence.closing());
        writer.row("Rule", sequence.rule().words());
        data(writer, sequence, chosen);
        writer.assumed(sequence.assumptions());
        return writer.done(true);
    }

    private void stages(AnswerWriter writer, Stages chosen) {
        writer.row("Stages", chosen.toString());
        writer.add("stages", chosen.percents());
        if (!WrongInput.isBlank(torque)) {
            var all = chosen.of(WrongInput.at(Field.TORQUE, () -> StatedTorque.parse(torque)));
            all.forEach(stage -> writer.row("", AnswerWriter.words(stage)));
            writer.add("stageTorques",
                    all.stream().map(stage -> AnswerWriter.calculated(stage, MeasureUnits.NEWTON_METRE)).toList());
        }
    }

    private static void data(AnswerWriter writer, TighteningSequence sequence, Stages chosen) {
        writer.add("layout", sequence.layout().words());
        writer.add("order", sequence.order());
        writer.add("loosening", sequence.loosening());
        var passes = sequence.passes(chosen);
        writer.add("closingOrder", passes.get(passes.size() - 1).order());
        writer.add("closing", sequence.closing());
        writer.add("rule", sequence.rule().name());
        writer.add("ruleInWords", sequence.rule().words());
    }

    private static String join(List<Integer> places) {
        return places.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
