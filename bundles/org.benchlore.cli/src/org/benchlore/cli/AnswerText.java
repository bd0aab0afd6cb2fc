// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.stream.Collectors;

import org.benchlore.torque.answer.Answer;

/** An answer as lines of text. */
final class AnswerText {

    private static final int LABEL = 18;

    private AnswerText() {
    }

    static String of(Answer answer) {
        return answer.lines().stream().map(AnswerText::line).collect(Collectors.joining());
    }

    /** A line with its label in front. */
    static String row(String label, String value) {
        return label + " ".repeat(Math.max(1, LABEL - label.length())) + value + "\n";
    }

    private static String line(Answer.Line line) {
        if (line instanceof Answer.Labelled labelled) {
            return row(labelled.label(), labelled.value());
        }
        if (line instanceof Answer.Phrases phrases) {
            return phrases.title() + "\n" + phrases.all().stream().map(phrase -> "  - " + phrase + "\n")
                    .collect(Collectors.joining());
        }
        return (line instanceof Answer.Headline headline ? headline.text() : ((Answer.Standing) line).text()) + "\n";
    }
}
