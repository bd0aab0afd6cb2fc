// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Evidence;
import org.benchlore.evidence.decide.Benefit;
import org.benchlore.evidence.decide.Reason;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.PartUse;
import org.benchlore.model.Procedure;
import org.benchlore.model.Shop;
import org.benchlore.model.Unit;
import org.benchlore.plan.LabourRates;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/** Finds what is worth adding to a plan, with every figure; makes one answer and is thrown away. */
final class Search {

    private final Library library;
    private final Planner planner;
    private final PlanRequest request;
    private final Machine machine;
    private final Optional<Unit> unit;
    private final Optional<Shop> shop;
    private final Optional<Plan> plan;
    private final Asking asking;
    private final Optional<LocalDate> keptUntil;
    private final CountingRules rules;
    private final Set<Component> renewed = new HashSet<>();

    Search(Library library, Planner planner, Evidence evidence, CountingRules rules, Subject subject, Optional<Plan> plan) {
        this.library = library;
        this.planner = planner;
        this.request = subject.request();
        this.machine = subject.machine();
        this.unit = subject.unit();
        this.plan = plan;
        this.rules = rules;
        this.shop = library.top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast);
        this.keptUntil = subject.keptUntil();
        var empty = new Adding(request, machine, unit, plan, keptUntil, "", 0, List.of(), List.of(), Optional.empty(), List.of());
        this.asking = new Asking(library, evidence, rules, request, unit, empty.months());
    }

    /**
     * What is asked about.
     *
     * @param request the plan that is asked for
     * @param machine its machine
     * @param unit its unit, if one was named
     * @param keptUntil the day until which it is kept, if known
     */
    record Subject(PlanRequest request, Machine machine, Optional<Unit> unit, Optional<LocalDate> keptUntil) {
    }

    Adding answer(List<String> remarks, IProgressMonitor monitor) {
        plan.ifPresent(this::renewedBy);
        var found = new ArrayList<Proposal>();
        var doing = new HashSet<>(request.procedures());
        doing.addAll(request.done());
        var ideas = new Ideas(library, machine, doing, taken()).all();
        var progress = SubMonitor.convert(monitor, ideas.size());
        for (var idea : ideas) {
            proposal(idea).ifPresent(found::add);
            progress.split(1);
        }
        var sorted = Ranking.sorted(found);
        var said = new ArrayList<>(remarks);
        said.addAll(unwritten(sorted));
        return new Adding(request, machine, unit, plan, keptUntil, shop.map(Shop::getCurrency).orElse(""),
                rules.surePercent(), sorted, pairs(sorted), Ranking.together(sorted), List.copyOf(said));
    }

    /** What came back before and is in one chain with what is renewed, but nobody has written how it is renewed. */
    private List<String> unwritten(List<Proposal> proposals) {
        var said = new ArrayList<String>();
        machine.eAllContents().forEachRemaining(element -> {
            if (element instanceof Component component && !renewed.contains(component) && isInChain(component)) {
                library.addressOf(component).filter(asking::isComeback).filter(it -> proposals.stream().noneMatch(one ->
                        one.component().equals(it.toString()))).ifPresent(it -> said.add("'" + (component.getTitle() == null
                                ? component.getId() : component.getTitle()) + "' brought a unit back before and makes the same function work,"
                                + " but nothing that renews it could be priced: write a procedure or a note for it."));
            }
        });
        return said;
    }

    private Set<String> taken() {
        var taken = new HashSet<>(request.procedures());
        taken.addAll(request.done());
        plan.ifPresent(it -> it.items().stream().map(PlanItem::id).forEach(taken::add));
        return taken;
    }

    /** Components that the plan renews: those of its procedures, and those whose parts it always renews. */
    private void renewedBy(Plan made) {
        made.items(PlanItem.Part.WORK).forEach(item -> {
            if (item.owner() instanceof Procedure procedure && procedure.getComponent() != null) {
                library.resolve(procedure.getComponent()).ifPresent(it -> renewed.addAll(Ideas.whole((Component) it)));
            }
            item.work().ifPresent(work -> work.getParts().stream().filter(use -> use.getNeed()
                    == org.benchlore.model.PartNeed.ALWAYS).map(PartUse::getComponent).filter(it -> it != null)
                    .map(library::resolve).flatMap(Optional::stream).filter(Component.class::isInstance)
                    .forEach(it -> renewed.add((Component) it)));
        });
    }

    private Optional<Proposal> proposal(Idea idea) {
        if (idea.notes().isEmpty() && idea.component().filter(renewed::contains).isPresent()) {
            return Optional.empty();
        }
        var speaks = asking.speaks(idea, renewed);
        if (speaks.reasons().isEmpty()) {
            return Optional.empty();
        }
        var made = planned(idea, speaks);
        return made.isPresent() || idea.addition().isEmpty() ? made : Optional.of(noted(idea, speaks));
    }

    /** Empty where no plan can be made, or nothing but being in the way speaks for it and it is out of the way. */
    private Optional<Proposal> planned(Idea idea, Idea.Speaks speaks) {
        if (plan.isEmpty() || idea.procedure().isEmpty()) {
            return Optional.empty();
        }
        try {
            var with = planner.alone(Besides.plus(request, idea.id()));
            var apart = planner.alone(request.fromClosed(List.of(idea.id())));
            var figures = new PlanFigures(plan.get(), with, apart);
            if (idea.notes().isEmpty() && !figures.isCheaplyReached() && !isSuspect(idea, speaks)) {
                return Optional.empty();
            }
            if (isTimedByNoteOnly(idea)) {
                return Optional.of(timed(idea, speaks, figures, apart));
            }
            var assumptions = new Besides(library, planner).add(figures.assumptions(), idea, plan.get(), apart);
            return Optional.of(proposal(idea, speaks, Proposal.Basis.PLANS, figures.extraMinutes(),
                    apart.times().minutes().usual(), figures.openings(), assumptions));
        } catch (PlanException e) {
            return Optional.empty();
        }
    }

    /** Without accesses two whole jobs share nothing in the plan; a note that gives minutes knows what they share. */
    private boolean isTimedByNoteOnly(Idea idea) {
        return plan.orElseThrow().problem().accesses().isEmpty() && idea.addition().map(it -> it.getExtra()).isPresent();
    }

    private Proposal timed(Idea idea, Idea.Speaks speaks, PlanFigures figures, Plan apart) {
        var addition = idea.addition().orElseThrow();
        var labour = new NoteFigures(library, new LabourRates(shop, request.today()), shop).labour(idea);
        var assumptions = new Besides(library, planner).add(figures.noted(labour), idea, plan.orElseThrow(), apart);
        return proposal(idea, speaks, Proposal.Basis.NOTE, NoteFigures.minutes(addition.getExtra()), addition.getAlone() == null
                ? apart.times().minutes().usual() : NoteFigures.minutes(addition.getAlone()), figures.openings(), assumptions);
    }

    /** In one chain with what is renewed, and it brought a unit back before. */
    private boolean isSuspect(Idea idea, Idea.Speaks speaks) {
        return speaks.reasons().contains(Reason.JOBS) && idea.component().filter(it -> isInChain(it)).isPresent();
    }

    private boolean isInChain(Component component) {
        return renewed.stream().flatMap(it -> it.getFunctions().stream()).map(library::resolve).flatMap(Optional::stream)
                .anyMatch(function -> component.getFunctions().stream().map(library::resolve).flatMap(Optional::stream)
                        .anyMatch(function::equals));
    }

    private Proposal noted(Idea idea, Idea.Speaks speaks) {
        var addition = idea.addition().orElseThrow();
        var figures = new NoteFigures(library, new LabourRates(shop, request.today()), shop).assumptions(idea);
        return proposal(idea, speaks, Proposal.Basis.NOTE, NoteFigures.minutes(addition.getExtra()),
                NoteFigures.minutes(addition.getAlone()), Map.of(), figures);
    }

    private Proposal proposal(Idea idea, Idea.Speaks speaks, Proposal.Basis basis, long extra, long apart,
            Map<String, BigDecimal> openings, Assumptions figures) {
        var test = new Besides(library, planner).check(idea).map(it -> it.getTitle() == null ? it.getId() : it.getTitle());
        return new Proposal(idea.id(), idea.title(), speaks.address().map(Object::toString).orElse(""),
                idea.notes().stream().map(note -> note.getId()).toList(), List.copyOf(EnumSet.copyOf(speaks.reasons())),
                benefits(idea, extra < apart), basis, extra, apart, openings, request.isFromClosed(), test, speaks.known(),
                common(figures, speaks.known()));
    }

    private Set<Benefit> benefits(Idea idea, boolean isShared) {
        var benefits = EnumSet.noneOf(Benefit.class);
        if (idea.component().filter(this::isInChain).isPresent()) {
            benefits.add(Benefit.ONE_SUSPECT_FEWER);
        }
        if (isShared) {
            benefits.add(Benefit.NO_SECOND_STAND);
        }
        return benefits;
    }

    /** What the unit is worth, what a comeback costs the shop, and the chances. */
    private Assumptions common(Assumptions figures, Known known) {
        var day = unit.map(Unit::getDayOut);
        var all = day.isPresent() ? figures.and(Figure.DAY_OUT, day.get().value(), "the unit's page")
                : figures.and(Figure.DAY_OUT, BigDecimal.ZERO, "not written down");
        if (machine.getValueNow() != null) {
            all = all.and(Figure.UNIT_VALUE, machine.getValueNow().value(), "the machine's page");
        }
        var comeback = shop.map(Shop::getComebackCost);
        all = comeback.isPresent() ? all.and(Figure.COMEBACK_COST, comeback.get().value(), "the shop's page") : all;
        all = all.and(Figure.TROUBLE, percent(known.findings().trouble().chance()), "renewals on record, and the shop's own figure");
        return known.isKnown() ? all.and(Figure.COMES_BACK, percent(known.findings().comeback().chance()), known.words()) : all;
    }

    private static BigDecimal percent(double chance) {
        return BigDecimal.valueOf(chance * 100).round(new java.math.MathContext(4));
    }

    private List<Adding.Pair> pairs(List<Proposal> proposals) {
        var pairs = new ArrayList<Adding.Pair>();
        for (int i = 0; i < proposals.size(); i++) {
            for (var other : proposals.subList(i + 1, proposals.size())) {
                pair(proposals.get(i), other).ifPresent(pairs::add);
            }
        }
        return List.copyOf(pairs);
    }

    private Optional<Adding.Pair> pair(Proposal one, Proposal other) {
        var shared = one.openings().keySet().stream().filter(other.openings()::containsKey).map(this::access).toList();
        if (shared.isEmpty()) {
            return Optional.empty();
        }
        try {
            var both = planner.alone(Besides.plus(request, one.id(), other.id()));
            return Optional.of(new Adding.Pair(one.id(), other.id(), shared, both.price().total()
                    .subtract(plan.orElseThrow().price().total()), one.assumptions().value(Figure.EXTRA)
                            .add(other.assumptions().value(Figure.EXTRA))));
        } catch (PlanException e) {
            return Optional.empty();
        }
    }

    private String access(String id) {
        return machine.getAccesses().stream().filter(it -> it.getId().equals(id)).map(it -> it.getTitle() == null ? id
                : it.getTitle()).findFirst().orElse(id);
    }
}
