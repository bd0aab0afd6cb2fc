// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.Map;
import java.util.Optional;

import org.benchlore.page.JobCardPage;
import org.benchlore.page.Page;
import org.benchlore.plan.Plan;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.ui.page.PagePictures;
import org.benchlore.workshop.OpenLibrary;

/** Answers a question: plans, and makes the pages. Runs beside the window's thread. */
final class PlanWork {

    private final OpenLibrary opened;
    private final Library library;
    private final Question question;
    private final Wanted wanted;
    private final Guide guide;

    private PlanWork(OpenLibrary opened, Question question) {
        this.opened = opened;
        this.library = opened.library();
        this.question = question;
        this.wanted = question.wanted();
        this.guide = new Guide(Optional.of(opened));
    }

    static Planned of(Question question) {
        return question.opened().map(opened -> new PlanWork(opened.library(), question).answer())
                .orElseGet(() -> without(FormLines.NONE, new Guide(Optional.empty()).noLibrary()));
    }

    private Planned answer() {
        var lines = FormLines.of(library, wanted, Optional.empty());
        if (!wanted.isEnough()) {
            return without(lines, guide.toDo(FormLines.top(library, wanted).map(ElementTitle::of), lines.accesses().isEmpty()));
        }
        try {
            return with(opened.planner().plan(wanted.request(question.today())));
        } catch (PlanException e) {
            return without(lines, guide.refusal(e, FormLines.machine(library, wanted)));
        }
    }

    private static Planned without(FormLines lines, Page page) {
        return new Planned(lines, Optional.empty(), page, page, page, Map.of());
    }

    private Planned with(Plan plan) {
        var pages = new PlanPages(library, plan);
        var card = JobCardPage.of(library, plan);
        var lines = FormLines.of(library, wanted, Optional.of(plan));
        return new Planned(lines, Optional.of(plan), pages.main(), plan.problem().accesses().isEmpty()
                ? guide.noAccesses(lines.subject()) : pages.picture(), card, PagePictures.of(card, library.root()));
    }
}
