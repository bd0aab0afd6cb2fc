// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Calculated;
import org.benchlore.torque.Figures;
import org.benchlore.torque.FrictionRange;
import org.benchlore.torque.Judge;
import org.benchlore.torque.Load;
import org.benchlore.torque.Slip;
import org.benchlore.torque.StatedStage;
import org.benchlore.torque.StatedTorque;
import org.benchlore.torque.Verdict;

/**
 * Does a stated torque suit a thread and a class?
 *
 * @param torque number and unit; before an angle the snug one
 * @param angles what follows it, each such as {@code 90} or {@code 90 °}
 * @param thread such as {@code M10x1.25}
 * @param propertyClass such as {@code 8.8}; blank if it stands beside the thread
 * @param head friction and bearing ring
 */
public record JudgeQuestion(String torque, List<String> angles, String thread, String propertyClass, HeadInput head) {

    private static final double NEWTONS = 1000;

    public JudgeQuestion {
        angles = List.copyOf(angles);
    }

    /**
     * Answers it; the answer is good if the torque is usual.
     *
     * @throws WrongInput if an input cannot be used
     */
    public Answer answer() {
        var stages = new ArrayList<StatedStage>();
        stages.add(new StatedStage.ToTorque(WrongInput.at(Field.TORQUE, () -> StatedTorque.parse(torque))));
        angles.forEach(angle -> stages.add(WrongInput.at(Field.ANGLES, () -> StatedStage.ByAngle.parse(angle))));
        var bolt = Bolt.read(thread, propertyClass);
        var range = head.friction().map(FrictionRange::given)
                .orElseGet(() -> FrictionRange.usual(bolt.propertyClass()));
        var verdict = new Judge(bolt.thread(), bolt.propertyClass(), range, head.bearing(bolt.thread().thread()))
                .judge(stages);
        var writer = new AnswerWriter();
        bolt.write(writer);
        write(writer, verdict);
        writer.phrases("Why:", "reasons", verdict.reasons());
        writer.assumed(verdict.assumptions());
        writer.notJudged(verdict.notJudged());
        return writer.done(verdict.isUsual());
    }

    private static void write(AnswerWriter writer, Verdict verdict) {
        var words = verdict.judged() + (verdict.snug() ? " before the angle" : "") + ": " + verdict.words();
        if (verdict.isUsual()) {
            writer.main("Verdict", words);
        } else {
            writer.stop("Verdict", words);
        }
        writer.add("judged", verdict.judged().toString());
        writer.add("snug", verdict.snug());
        writer.add("verdict", verdict.isSlip() ? "UNIT_SLIP" : verdict.place().name());
        writer.add("place", verdict.place().name());
        writer.torque("Usual from", "usualFrom", verdict.usualFrom());
        writer.torque("Usual to", "usualTo", verdict.usualTo());
        writer.row("Preload", preload(verdict) + " (" + Calculated.MARK + ")");
        writer.add("load", data(verdict.load()));
        writer.add("loadWithLeastFriction", data(verdict.slippery()));
        writer.add("loadWithMostFriction", data(verdict.rough()));
        writer.add("slips", verdict.slips().stream().map(JudgeQuestion::data).toList());
    }

    private static String preload(Verdict verdict) {
        var middle = Figures.show(verdict.load().preload() / NEWTONS) + " kN";
        return verdict.rough().equals(verdict.slippery()) ? middle
                : middle + ", between " + Figures.show(verdict.rough().preload() / NEWTONS) + " and "
                        + Figures.show(verdict.slippery().preload() / NEWTONS) + " kN with the friction to be expected";
    }

    private static Map<String, Object> data(Load load) {
        var data = AnswerWriter.calculated(Calculated.of(load.preload(), MeasureUnits.NEWTON), MeasureUnits.KILONEWTON);
        data.put("shareOfProof", load.shareOfProof());
        data.put("shareOfYield", load.shareOfYield());
        return data;
    }

    private static Map<String, Object> data(Slip slip) {
        var data = new LinkedHashMap<String, Object>();
        data.put("words", slip.words());
        data.put("factor", slip.factor());
        data.put("shareOfProof", slip.shareOfProof());
        return data;
    }
}
