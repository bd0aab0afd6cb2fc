// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.benchlore.model.Procedure;
import org.benchlore.model.Status;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.search.PlanException;
import org.benchlore.plan.search.PlanSearch;
import org.benchlore.store.Library;

/** Makes plans from a library. Safe for several threads; the same library and request give the same plan. */
public final class Planner {

    private final Library library;
    private final PlanSearch search;

    /**
     * Makes a planner.
     *
     * @param library where machines, procedures and the shop are read
     */
    public Planner(Library library) {
        this.library = library;
        this.search = new PlanSearch(PlanSearch.USUAL_BRANCHES);
    }

    /**
     * Makes a plan, compared with separate visits and, if the machine is not closed any more, with the first plan.
     *
     * @param request what is to be planned
     * @return the plan
     * @throws PlanException if there is none, in one plain sentence that names the elements
     */
    public Plan plan(PlanRequest request) throws PlanException {
        var plan = alone(request);
        Optional<FirstPlan> first = request.isFromClosed() ? Optional.empty()
                : Optional.of(FirstPlan.of(alone(request.fromClosed(firstProcedures(request))), plan));
        return plan.with(visits(plan), first);
    }

    /** The first plan was for what is left and for what has been done, but for that which comes with other things. */
    private List<String> firstProcedures(PlanRequest request) throws PlanException {
        var book = new PlanBook(library, request.subject());
        var all = new TreeSet<>(request.procedures());
        all.addAll(request.done());
        var comesAlong = new LinkedHashSet<String>();
        book.accesses().values().forEach(access -> comesAlong.addAll(book.ids(access.getAfterClosing())));
        for (var id : all) {
            var procedure = book.procedure(id);
            comesAlong.addAll(book.ids(procedure.getBefore()));
            comesAlong.addAll(book.ids(procedure.getAfterClosing()));
        }
        return all.stream().filter(id -> request.procedures().contains(id) || !comesAlong.contains(id)).toList();
    }

    private Optional<Visits> visits(Plan plan) throws PlanException {
        var left = plan.procedures().stream().map(Procedure::getId).filter(id -> !plan.request().done().contains(id)).toList();
        if (left.size() < 2) {
            return Optional.empty();
        }
        var plans = new ArrayList<Plan>();
        for (var id : left) {
            plans.add(alone(plan.request().fromClosed(List.of(id))));
        }
        return Optional.of(plan.request().isFromClosed() ? Visits.of(plans, plan) : fromNow(plans, plan));
    }

    /** A machine that stands open is open for the first visit only: the one for which that spares most. */
    private Visits fromNow(List<Plan> closed, Plan plan) throws PlanException {
        var best = closed;
        var least = Optional.<BigDecimal>empty();
        for (int i = 0; i < closed.size(); i++) {
            var plans = new ArrayList<>(closed);
            plans.set(i, alone(plan.request().only(closed.get(i).procedures().get(0).getId())));
            var total = Visits.of(plans, plan).total();
            if (least.isEmpty() || total.compareTo(least.get()) < 0) {
                best = plans;
                least = Optional.of(total);
            }
        }
        return Visits.of(best, plan);
    }

    /**
     * Makes a plan without comparing it with anything: what many plans are compared by.
     *
     * @param request what is to be planned
     * @return the plan, without separate visits and first plan
     * @throws PlanException if there is none, in one plain sentence that names the elements
     */
    public Plan alone(PlanRequest request) throws PlanException {
        var book = new PlanBook(library, request.subject());
        var rates = new LabourRates(book.shop(), request.today());
        var inputs = new PlanInputs(book, request, new WorkFacts(library, rates));
        var problem = inputs.problem();
        var solution = search.solve(problem);
        var items = new ArrayList<>(new PlanOrder(problem, solution, inputs).items());
        items.addAll(new PlanProofs(new ItemMaker(inputs)).of(items));
        var parts = new PlanParts(book).of(items);
        var supplies = new PlanSupplies(library).of(items);
        var lack = new PlanLack(book, request.today());
        long wait = parts.stream().filter(line -> !line.isOnlyIfFound()).mapToLong(PartLine::leadMinutes).max().orElse(0);
        var procedures = procedures(request, book);
        return new Plan(request, book.machine(), book.unit(), procedures, problem, solution, List.copyOf(items),
                PlanTimes.of(items, request.today(), wait), parts, supplies, lack.tools(items), lack.people(items),
                PlanPrice.of(items, parts, supplies, request, book.shop()), Optional.empty(), Optional.empty(),
                new PlanRemarks(problem, solution, inputs).of(items), needsSenior(items, procedures));
    }

    private static List<Procedure> procedures(PlanRequest request, PlanBook book) throws PlanException {
        var found = new ArrayList<Procedure>();
        for (var id : request.procedures()) {
            found.add(book.procedure(id));
        }
        return found;
    }

    /** One reviewed procedure alone has been looked at by a senior; whatever is put together has not. */
    private static boolean needsSenior(List<PlanItem> items, List<Procedure> procedures) {
        var works = new LinkedHashSet<String>();
        items.stream().filter(item -> item.part() == Part.WORK).map(PlanItem::id).forEach(works::add);
        return works.size() > 1 || procedures.stream().anyMatch(it -> it.getStatus() != Status.REVIEWED);
    }
}
