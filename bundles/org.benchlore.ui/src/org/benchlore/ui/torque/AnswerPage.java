// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.benchlore.torque.answer.Answer;

/** An answer as a page, the standing caution before all else, so that it is in sight without scrolling. */
final class AnswerPage {

    private static final int AFTER_HEADLINE = 2;

    private final List<Block> blocks = new ArrayList<>();
    private final List<Block.Pair> pairs = new ArrayList<>();

    private AnswerPage() {
    }

    static Page of(Answered answered) {
        var page = new AnswerPage();
        answered.answer().lines().forEach(page::add);
        page.endPairs();
        answered.drawing().ifPresent(drawing -> page.blocks.add(AFTER_HEADLINE, new Block.Drawn(drawing)));
        return new Page("", page.blocks);
    }

    /** A page that says what there is to enter. */
    static Page guidance(QuestionKind kind) {
        return new Page("", List.of(new Block.Paragraph(List.of(Span.of(kind.what())))));
    }

    /** A page that says what is wrong, for a field that may be out of sight, and what there is to enter. */
    static Page refusal(QuestionKind kind, String sentence) {
        return new Page("", List.of(new Block.Paragraph(List.of(Span.strong(sentence))),
                new Block.Paragraph(List.of(Span.of(kind.what())))));
    }

    private void add(Answer.Line line) {
        if (line instanceof Answer.Labelled labelled) {
            labelled(labelled);
            return;
        }
        endPairs();
        if (line instanceof Answer.Headline headline) {
            blocks.add(new Block.Heading(3, headline.text()));
        } else if (line instanceof Answer.Phrases phrases) {
            blocks.add(new Block.Paragraph(List.of(Span.strong(phrases.title()))));
            blocks.add(new Block.Bullets(phrases.all().stream().map(phrase -> List.of(Span.of(phrase))).toList()));
        } else if (line instanceof Answer.Standing standing) {
            blocks.add(0, new Block.Banner(Block.Tone.CAUTION, standing.text()));
        }
    }

    /** What was asked for is set off; where something speaks against it, it cannot be overlooked. */
    private void labelled(Answer.Labelled labelled) {
        if (labelled.weight() == Answer.Weight.STOP) {
            endPairs();
            blocks.add(new Block.Banner(Block.Tone.STOP, labelled.label() + ": " + labelled.value()));
            return;
        }
        pairs.add(new Block.Pair(labelled.label().strip(), List.of(
                labelled.weight() == Answer.Weight.MAIN ? Span.strong(labelled.value()) : Span.of(labelled.value()))));
    }

    private void endPairs() {
        if (!pairs.isEmpty()) {
            blocks.add(new Block.Pairs(List.copyOf(pairs)));
            pairs.clear();
        }
    }
}
