// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Evidence;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Unit;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;
import org.benchlore.store.UnknownId;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;

/** Says what is worth adding while a machine is open. The same library and request give the same answer. */
public final class Adder {

    private static final int LAST_MONTH = 12;
    private static final int LAST_DAY = 31;

    private final Library library;
    private final Planner planner;
    private final Evidence evidence;

    /**
     * Makes one.
     *
     * @param library where machines, procedures and notes are read
     * @param planner plans over the same library
     * @param evidence counts over the same library
     */
    public Adder(Library library, Planner planner, Evidence evidence) {
        this.library = library;
        this.planner = planner;
        this.evidence = evidence;
    }

    /**
     * Finds what may be worth adding.
     *
     * @param request the plan it would be added to
     * @param keepYears years the unit will be kept; empty for what its page says
     * @param rules how the shop counts
     * @return the answer; where no plan can be made, what notes say alone
     * @throws PlanException if an id is unknown, or no plan can be made and no note speaks, in one plain sentence
     */
    public Adding adding(PlanRequest request, OptionalInt keepYears, CountingRules rules) throws PlanException {
        return adding(request, keepYears, rules, new NullProgressMonitor());
    }

    /**
     * Finds what may be worth adding, idea by idea.
     *
     * @param request the plan it would be added to
     * @param keepYears years the unit will be kept; empty for what its page says
     * @param rules how the shop counts
     * @param monitor shows progress by ideas; may cancel
     * @return the answer; where no plan can be made, what notes say alone
     * @throws PlanException if an id is unknown, or no plan can be made and no note speaks, in one plain sentence
     * @throws org.eclipse.core.runtime.OperationCanceledException if it was cancelled
     */
    public Adding adding(PlanRequest request, OptionalInt keepYears, CountingRules rules, IProgressMonitor monitor)
            throws PlanException {
        var subject = subject(request, keepYears);
        for (var id : request.procedures()) {
            if (library.top(id).filter(Procedure.class::isInstance).isEmpty()) {
                throw new PlanException(new UnknownId(library.catalogue(), Kind.PROCEDURE).says(id, "procedure"),
                        List.of(id));
            }
        }
        try {
            var plan = Optional.of(planner.plan(request));
            return new Search(library, planner, evidence, rules, subject, plan).answer(List.of(), monitor);
        } catch (PlanException e) {
            return withoutPlan(subject, rules, e, monitor);
        }
    }

    /**
     * What a plan comes to beyond what was agreed before. Where the machine is open it is the plan for both less the plan for
     * what was agreed, both from where it stands, so that refit and closing works that are due anyway cancel out; where it is
     * closed again it is the whole plan.
     *
     * @param adding the answer with the plan
     * @param agreed ids of procedures that were agreed before
     * @return an amount with tax, or empty if one of these cannot be planned
     */
    public Optional<BigDecimal> more(Adding adding, List<String> agreed) {
        var request = adding.request();
        if (adding.plan().isEmpty()) {
            return Optional.empty();
        }
        if (request.open().isEmpty() && request.procedures().stream().noneMatch(agreed::contains)) {
            return Optional.of(adding.plan().get().price().total());
        }
        var all = new ArrayList<>(agreed);
        all.addAll(request.procedures());
        try {
            return Optional.of(total(request, all, agreed).subtract(total(request, agreed, agreed)));
        } catch (PlanException e) {
            return Optional.empty();
        }
    }

    private BigDecimal total(PlanRequest request, List<String> procedures, List<String> agreed) throws PlanException {
        var done = request.done().stream().filter(id -> !agreed.contains(id)).toList();
        return planner.alone(new PlanRequest(request.subject(), procedures, request.open(), done, request.today(),
                request.fixedLabour())).price().total();
    }

    private Adding withoutPlan(Search.Subject subject, CountingRules rules, PlanException why, IProgressMonitor monitor)
            throws PlanException {
        var remarks = new ArrayList<String>();
        remarks.add("No plan can be made, so only what notes give is shown: " + why.getMessage());
        var answer = new Search(library, planner, evidence, rules, subject, Optional.<Plan>empty()).answer(remarks, monitor);
        if (answer.proposals().isEmpty()) {
            throw why;
        }
        return answer;
    }

    private Search.Subject subject(PlanRequest request, OptionalInt keepYears) throws PlanException {
        var top = library.top(request.subject()).orElseThrow(() -> new PlanException(
                new UnknownId(library.catalogue(), Kind.UNIT, Kind.MACHINE).says(request.subject(), "machine or unit"),
                List.of(request.subject())));
        var unit = top instanceof Unit it ? Optional.of(it) : Optional.<Unit>empty();
        var machine = unit.isPresent() ? library.resolve(unit.get().getMachine()).orElse(null) : top;
        if (machine instanceof Machine it) {
            return new Search.Subject(request, it, unit, kept(request.today(), unit, keepYears));
        }
        throw new PlanException("'" + request.subject() + "' is neither a machine nor a unit of one; give the id of one",
                List.of(request.subject()));
    }

    private static Optional<LocalDate> kept(LocalDate today, Optional<Unit> unit, OptionalInt keepYears) {
        if (keepYears.isPresent()) {
            return Optional.of(today.plusYears(keepYears.getAsInt()));
        }
        return unit.map(Unit::getKeptUntil).filter(year -> year != null).map(year -> LocalDate.of(
                year, LAST_MONTH, LAST_DAY));
    }
}
