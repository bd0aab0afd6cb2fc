// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.List;

import org.benchlore.diagnose.Question;
import org.benchlore.diagnose.QuestionException;
import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.benchlore.ui.session.Opened;

/**
 * A question to the library as it is at one moment.
 *
 * @param opened the library
 * @param question what is asked
 */
record Asked(Opened opened, Question question) {

    /** Answers it, away from the window's thread; what is wrong with the question becomes a page of one sentence. */
    Outcome answer() {
        try {
            var assessment = opened.library().diagnoses().ask(question);
            return Outcome.of(assessment, opened.library().diagnosisPages().onScreen(assessment));
        } catch (QuestionException e) {
            return Outcome.refused(question.replies().isEmpty() ? e.getMessage() : Messages.answerGone);
        }
    }

    /** A page of plain sentences. */
    static Page page(String... sentences) {
        return new Page("", List.of(sentences).stream()
                .<Block>map(sentence -> new Block.Paragraph(List.of(Span.of(sentence)))).toList());
    }
}
