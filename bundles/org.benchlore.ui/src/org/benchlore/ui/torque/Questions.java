// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.measure.MeasureUnit;
import org.benchlore.page.drawing.SequenceDrawing;
import org.benchlore.torque.answer.BoltQuestion;
import org.benchlore.torque.answer.ConvertQuestion;
import org.benchlore.torque.answer.Field;
import org.benchlore.torque.answer.HeadInput;
import org.benchlore.torque.answer.JudgeQuestion;
import org.benchlore.torque.answer.SequenceQuestion;
import org.benchlore.torque.answer.WrenchQuestion;
import org.benchlore.torque.wrench.WrenchRack;

/** The kinds of questions, in the order of their tabs. */
final class Questions {

    private static final List<String> CLASSES = List.of("8.8", "10.9", "12.9", "4.6", "5.6", "5.8", "6.8", "9.8", "grade 2",
            "grade 5", "grade 8", "A2-50", "A2-70", "A4-80");

    private final Supplier<Optional<WrenchRack>> rack;

    /** Makes them; {@code rack} gives the shop's wrenches as they are known now. */
    Questions(Supplier<Optional<WrenchRack>> rack) {
        this.rack = rack;
    }

    List<QuestionKind> all() {
        return List.of(judge(), bolt(), convert(), wrench(), sequence());
    }

    private static Input torque() {
        return Input.needed(Field.TORQUE, Messages.torque, "45 N·m, 33 ft-lb, 4.6 kgf·m");
    }

    private static List<Input> bolts() {
        return List.of(Input.needed(Field.THREAD, Messages.thread, "M10, M10×1.25, 3/8-16 UNC"),
                Input.offered(Field.CLASS, Messages.propertyClass, CLASSES),
                Input.optional(Field.FRICTION, Messages.friction, Messages.frictionHint),
                Input.optional(Field.HEAD_FRICTION, Messages.headFriction, Messages.headFrictionHint),
                Input.optional(Field.BEARING, Messages.bearing, Messages.bearingHint));
    }

    private static HeadInput head(Entered entered) {
        return new HeadInput(entered.get(Field.FRICTION), entered.get(Field.HEAD_FRICTION), entered.get(Field.BEARING));
    }

    private static QuestionKind judge() {
        var inputs = new ArrayList<Input>(List.of(torque(),
                Input.optional(Field.ANGLES, Messages.angles, Messages.anglesHint)));
        inputs.addAll(bolts());
        return new QuestionKind("judge", Messages.judge, Messages.judgeWhat, List.copyOf(inputs), entered -> Answered.of(
                new JudgeQuestion(entered.get(Field.TORQUE), angles(entered.get(Field.ANGLES)), entered.get(Field.THREAD),
                        entered.get(Field.CLASS), head(entered)).answer()));
    }

    /** Angles parted by a plus sign, a semicolon or 'then'. */
    private static List<String> angles(String text) {
        return text.isBlank() ? List.of() : Arrays.asList(text.strip().split("\\s*(?:\\+|;|then)\\s*"));
    }

    private static QuestionKind bolt() {
        var inputs = new ArrayList<Input>(bolts());
        inputs.add(Input.optional(Field.USE, Messages.use, "0.9"));
        return new QuestionKind("bolt", Messages.bolt, Messages.boltWhat, List.copyOf(inputs), entered -> Answered.of(
                new BoltQuestion(entered.get(Field.THREAD), entered.get(Field.CLASS), head(entered),
                        entered.get(Field.USE)).answer()));
    }

    private static QuestionKind convert() {
        return new QuestionKind("convert", Messages.convert, Messages.convertWhat, List.of(torque(),
                Input.offered(Field.TO_UNIT, Messages.toUnit,
                        ConvertQuestion.units().stream().map(MeasureUnit::symbol).toList())),
                entered -> Answered.of(new ConvertQuestion(entered.get(Field.TORQUE), entered.get(Field.TO_UNIT)).answer()));
    }

    private QuestionKind wrench() {
        return new QuestionKind("wrench", Messages.wrench, Messages.wrenchWhat, List.of(torque(),
                Input.optional(Field.LENGTH, Messages.length, Messages.lengthHint),
                Input.optional(Field.OFFSET, Messages.offset, Messages.offsetHint),
                Input.optional(Field.ADAPTER_ANGLE, Messages.adapterAngle, Messages.adapterAngleHint)),
                entered -> Answered.of(new WrenchQuestion(entered.get(Field.TORQUE), entered.get(Field.LENGTH),
                        entered.get(Field.OFFSET), entered.get(Field.ADAPTER_ANGLE), rack.get(), LocalDate.now()).answer()));
    }

    private static QuestionKind sequence() {
        return new QuestionKind("sequence", Messages.sequence, Messages.sequenceWhat, List.of(
                Input.fixed(Field.LAYOUT, Messages.layout, List.of(Messages.circle, Messages.grid, Messages.own)),
                Input.needed(Field.SIZE, Messages.size, Messages.sizeHint),
                Input.optional(Field.STAGES, Messages.stages, "30, 70, 100"),
                Input.optional(Field.TORQUE, Messages.finalTorque, "90 N·m")), entered -> {
            var question = new SequenceQuestion(layout(entered.get(Field.LAYOUT)), entered.get(Field.SIZE),
                    entered.get(Field.STAGES), entered.get(Field.TORQUE));
            return new Answered(question.answer(),
                    Optional.of(SequenceDrawing.of(question.sequence(), question.stageList())));
        });
    }

    private static String layout(String label) {
        if (label.equals(Messages.own)) {
            return "own";
        }
        return label.equals(Messages.grid) ? "grid" : "circle";
    }
}
