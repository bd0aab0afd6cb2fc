// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.model.Access;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.model.Unit;
import org.benchlore.page.JobCardPage;
import org.benchlore.page.Page;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.ui.page.PagePictures;
import org.benchlore.workshop.OpenLibrary;

/** Answers a question: plans, and makes the pages. Runs beside the window's thread. */
final class PlanWork {

    private final OpenLibrary opened;
    private final Library library;
    private final Question question;
    private final Wanted wanted;
    private final Guide guide;
    private final Optional<TopElement> subject;
    private final List<Line> accesses;

    private PlanWork(OpenLibrary opened, Question question) {
        this.opened = opened;
        this.library = opened.library();
        this.question = question;
        this.wanted = question.wanted();
        this.guide = new Guide(Optional.of(opened));
        this.subject = wanted.subject().isEmpty() ? Optional.empty() : library.top(wanted.subject());
        this.accesses = machine().map(Machine::getAccesses).stream().flatMap(List::stream).map(PlanWork::line).toList();
    }

    static Planned of(Question question) {
        return question.opened().map(opened -> new PlanWork(opened.library(), question).answer())
                .orElseGet(() -> nothing(new Guide(Optional.empty()).noLibrary()));
    }

    private static Planned nothing(Page page) {
        return new Planned("", List.of(), List.of(), List.of(), Optional.empty(), page, page, page, Map.of());
    }

    private Planned answer() {
        if (!wanted.isEnough()) {
            return without(guide.toDo(subject.map(ElementTitle::of), accesses.isEmpty()));
        }
        try {
            return with(opened.planner().plan(wanted.request(question.today())));
        } catch (PlanException e) {
            return without(guide.refusal(e, machine()));
        }
    }

    private Planned without(Page page) {
        return new Planned(title(), lines(wanted.work()), accesses, lines(Stream.concat(wanted.work().stream(),
                wanted.done().stream()).distinct().toList()), Optional.empty(), page, page, page, Map.of());
    }

    private Planned with(Plan plan) {
        var pages = new PlanPages(library, plan);
        var card = JobCardPage.of(library, plan);
        return new Planned(title(), lines(wanted.work()), accesses, doable(plan), Optional.of(plan), pages.main(),
                plan.problem().accesses().isEmpty() ? guide.noAccesses(title()) : pages.picture(), card,
                PagePictures.of(card, library.root()));
    }

    /** What was picked, what is done, and what comes along with it, each once. */
    private List<Line> doable(Plan plan) {
        var ids = new ArrayList<>(wanted.work());
        ids.addAll(wanted.done());
        plan.items().stream().filter(item -> item.proof().isEmpty() && item.owner() instanceof Procedure)
                .map(PlanItem::id).forEach(ids::add);
        return lines(ids.stream().distinct().toList());
    }

    private List<Line> lines(List<String> procedures) {
        var lines = new LinkedHashMap<String, Line>();
        procedures.forEach(id -> lines.put(id, new Line(id, library.catalogue().byId(id).map(Row::title).orElse(id))));
        return List.copyOf(lines.values());
    }

    private String title() {
        return subject.map(ElementTitle::of).orElse("");
    }

    private Optional<Machine> machine() {
        return subject.flatMap(top -> top instanceof Unit unit ? library.resolve(unit.getMachine()) : Optional.of(top))
                .filter(Machine.class::isInstance).map(Machine.class::cast);
    }

    private static Line line(Access access) {
        return new Line(access.getId(), access.getTitle() == null ? access.getId() : access.getTitle());
    }
}
