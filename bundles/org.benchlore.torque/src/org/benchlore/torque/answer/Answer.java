// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.List;
import java.util.Map;

/**
 * An answer as lines for people and as data for programs, so that neither says less than the other.
 *
 * @param lines in order; the caution is the last
 * @param data names to texts, numbers, booleans, lists and maps of these, in the order in which they are written
 * @param good whether nothing speaks against what was asked about
 */
public record Answer(List<Line> lines, Map<String, Object> data, boolean good) {

    public Answer {
        lines = List.copyOf(lines);
    }

    /** One line or group of lines. */
    public sealed interface Line {
    }

    /**
     * What the answer is about.
     *
     * @param text the words
     */
    public record Headline(String text) implements Line {
    }

    /**
     * A value with its label.
     *
     * @param label what it is, empty under the label before
     * @param value the value; calculated ones carry their mark
     * @param weight how much it matters
     */
    public record Labelled(String label, String value, Weight weight) implements Line {
    }

    /** How much a value matters. */
    public enum Weight {
        /** Beside what was asked for. */
        PLAIN,
        /** What was asked for. */
        MAIN,
        /** What was asked for, and something speaks against it. */
        STOP
    }

    /**
     * Sentences or phrases under a title.
     *
     * @param title with a colon
     * @param all one each
     */
    public record Phrases(String title, List<String> all) implements Line {
    }

    /**
     * The standing caution.
     *
     * @param text the words
     */
    public record Standing(String text) implements Line {
    }
}
