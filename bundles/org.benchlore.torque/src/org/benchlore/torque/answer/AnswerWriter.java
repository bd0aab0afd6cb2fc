// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.measure.MeasureUnit;
import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Calculated;
import org.benchlore.torque.Caution;

/** Writes an answer from its beginning to its end. */
final class AnswerWriter {

    private final List<Answer.Line> lines = new ArrayList<>();
    private final Map<String, Object> data = new LinkedHashMap<>();

    void headline(String text) {
        lines.add(new Answer.Headline(text));
    }

    void row(String label, String value) {
        lines.add(new Answer.Labelled(label, value, Answer.Weight.PLAIN));
    }

    /** What was asked for. */
    void main(String label, String value) {
        lines.add(new Answer.Labelled(label, value, Answer.Weight.MAIN));
    }

    /** What was asked for, where something speaks against it. */
    void stop(String label, String value) {
        lines.add(new Answer.Labelled(label, value, Answer.Weight.STOP));
    }

    void add(String name, Object value) {
        data.put(name, value);
    }

    /** A calculated torque: N·m and lbf·ft in words, N·m as data beside its mark. */
    void torque(String label, String name, Calculated torque) {
        row(label, words(torque));
        add(name, calculated(torque, MeasureUnits.NEWTON_METRE));
    }

    static String words(Calculated torque) {
        return torque.show(MeasureUnits.NEWTON_METRE, MeasureUnits.POUND_FOOT);
    }

    static Map<String, Object> calculated(Calculated value, MeasureUnit unit) {
        var made = new LinkedHashMap<String, Object>();
        made.put("value", value.in(unit));
        made.put("unit", unit.symbol());
        made.put("mark", Calculated.MARK);
        return made;
    }

    void assumed(List<String> phrases) {
        phrases("Assumed:", "assumptions", phrases);
    }

    void notJudged(List<String> phrases) {
        phrases("Not judged:", "notJudged", phrases);
    }

    void phrases(String title, String name, List<String> phrases) {
        lines.add(new Answer.Phrases(title, List.copyOf(phrases)));
        add(name, List.copyOf(phrases));
    }

    /** Ends with the standing caution. */
    Answer done(boolean good) {
        lines.add(new Answer.Standing(Caution.CHECK));
        add("caution", Caution.CHECK);
        return new Answer(lines, Collections.unmodifiableMap(data), good);
    }
}
