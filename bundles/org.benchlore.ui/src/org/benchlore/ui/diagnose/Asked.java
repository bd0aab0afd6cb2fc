// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.diagnose.Question;
import org.benchlore.diagnose.QuestionException;
import org.benchlore.page.Block;
import org.benchlore.page.Labels;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.benchlore.ui.Failures;
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
            return refused(question.replies().isEmpty() ? e.getMessage() : Messages.answerGone);
        } catch (RuntimeException e) {
            Failures.log(Messages.weighing, e);
            return refused(Messages.failed);
        }
    }

    private Outcome refused(String sentence) {
        return Outcome.refused(sentence, opened.library().isInvented());
    }

    /** A page of a plain sentence, below the band of invented data where the library holds such. */
    static Page page(String sentence, boolean isInvented) {
        var blocks = new ArrayList<Block>();
        if (isInvented) {
            blocks.add(new Block.Banner(Block.Tone.INVENTED, Labels.INVENTED));
        }
        blocks.add(new Block.Paragraph(List.of(Span.of(sentence))));
        return new Page("", List.copyOf(blocks));
    }
}
