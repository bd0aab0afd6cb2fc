// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.page.AddingPage;
import org.benchlore.page.Block;
import org.benchlore.page.Labels;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.search.PlanException;
import org.benchlore.ui.plan.FormLines;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.IProgressMonitor;

/** Answers a question: plans, counts, and makes the pages. Runs beside the window's thread and may be cancelled. */
final class AddingWork {

    private final OpenLibrary opened;
    private final Question question;

    private AddingWork(OpenLibrary opened, Question question) {
        this.opened = opened;
        this.question = question;
    }

    static Weighed of(Question question, IProgressMonitor monitor) {
        return question.opened().map(opened -> new AddingWork(opened.library(), question).answer(monitor))
                .orElseGet(() -> new Weighed(FormLines.NONE, Optional.empty(), Optional.empty(), Map.of(),
                        page(false, Messages.title, Stream.of(Messages.noLibrary))));
    }

    private Weighed answer(IProgressMonitor monitor) {
        if (question.wanted().subject().isEmpty() || question.wanted().work().isEmpty()) {
            return without(Optional.empty(), Messages.title, Messages.pickSubject, Messages.pickWork, Messages.pickState);
        }
        try {
            var own = question.own().isPresent() ? question.own().get() : opened.adder().adding(
                    question.wanted().request(question.today()), question.keep(), opened.countingRules(), monitor);
            return own.proposals().isEmpty() ? nothing(own) : with(own, question.changes().applied(own));
        } catch (PlanException e) {
            var sentence = e.getMessage().endsWith(".") ? e.getMessage() : e.getMessage() + ".";
            return without(Optional.empty(), Messages.refusedTitle, sentence, Messages.refusedHelp);
        }
    }

    private Weighed nothing(Adding own) {
        var sentences = new ArrayList<>(List.of(AddingPage.NOTHING));
        sentences.addAll(own.remarks());
        sentences.add(Messages.nothingHelp);
        return without(Optional.of(own), Messages.nothingTitle, sentences.toArray(String[]::new));
    }

    private Weighed without(Optional<Adding> adding, String title, String... sentences) {
        return new Weighed(lines(adding), adding, adding, Map.of(), page(opened.isInvented(), title, Stream.of(sentences)));
    }

    private Weighed with(Adding own, Adding adding) {
        var pages = new HashMap<String, Page>();
        adding.proposals().forEach(one -> pages.put(one.id(), AddingPage.of(adding, one)));
        return new Weighed(lines(Optional.of(adding)), Optional.of(own), Optional.of(adding), Map.copyOf(pages),
                new Page("", List.of()));
    }

    private FormLines lines(Optional<Adding> adding) {
        return FormLines.of(opened.library(), question.wanted(), adding.flatMap(Adding::plan));
    }

    private static Page page(boolean isInvented, String title, Stream<String> sentences) {
        var blocks = new ArrayList<Block>(List.of(new Block.Heading(1, title)));
        if (isInvented) {
            blocks.add(new Block.Banner(Block.Tone.INVENTED, Labels.INVENTED));
        }
        sentences.forEach(sentence -> blocks.add(new Block.Paragraph(List.of(Span.of(sentence)))));
        return new Page(title, List.copyOf(blocks));
    }
}
