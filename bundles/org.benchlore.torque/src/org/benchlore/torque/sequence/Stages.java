// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.measure.Wording;
import org.benchlore.torque.Calculated;
import org.benchlore.torque.StatedTorque;

/**
 * Shares of the final torque in which a sequence is tightened, in percent: rising, the last one 100, at most six.
 *
 * @param percents the shares
 */
public record Stages(List<Integer> percents) {

    /** A third, two thirds and all of it: within the rounds of ASME PCC-1 (from memory). */
    public static final Stages USUAL = new Stages(List.of(30, 70, 100));

    private static final String EXAMPLE = "30,70,100";
    private static final int ALL = 100;
    private static final int MOST = 6;

    public Stages {
        percents = List.copyOf(percents);
        int before = 0;
        for (int percent : percents) {
            if (percent <= before || percent > ALL) {
                throw new IllegalArgumentException("Stages rise from above 0 to 100 percent, but " + percent
                        + " follows " + before + ": write for example " + EXAMPLE + ".");
            }
            before = percent;
        }
        if (before != ALL || percents.size() > MOST) {
            throw new IllegalArgumentException("Stages are one to six and end at 100 percent: write for example "
                    + EXAMPLE + ".");
        }
    }

    /**
     * Reads shares parted by commas or blanks, with or without percent signs.
     *
     * @throws IllegalArgumentException with one plain sentence if they are none
     */
    public static Stages parse(String text) {
        var trimmed = text == null ? "" : text.strip();
        var percents = new ArrayList<Integer>();
        for (var word : trimmed.split("\\s*[,;\\s]\\s*")) {
            if (!word.matches("[0-9]{1,3}%?")) {
                throw Wording.problem(word, "is no stage in percent", EXAMPLE);
            }
            percents.add(Integer.valueOf(word.replace("%", "")));
        }
        return new Stages(percents);
    }

    /** The torque of each stage, calculated from the stated final one. */
    public List<Calculated> of(StatedTorque last) {
        return percents.stream().map(percent -> Calculated.of(last.newtonMetres() * percent / ALL,
                MeasureUnits.NEWTON_METRE)).toList();
    }

    /** In words: {@code 30 %, 70 %, 100 %}. */
    @Override
    public String toString() {
        return percents.stream().map(percent -> percent + " %").collect(Collectors.joining(", "));
    }
}
