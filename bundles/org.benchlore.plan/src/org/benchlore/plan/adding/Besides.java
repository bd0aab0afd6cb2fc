// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Part;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** What a later job costs beside its own plan: finding out what it is, and what its failure ruins. */
final class Besides {

    private static final Set<ProcedureKind> CHANGES = Set.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL);

    private final Library library;
    private final Planner planner;

    Besides(Library library, Planner planner) {
        this.library = library;
        this.planner = planner;
    }

    /** A cause and the procedure that proves it. */
    private record Proof(Cause cause, Procedure check) {
    }

    /** The check that proves the cause a note names, else the first that proves a cause of the component; never the work itself. */
    Optional<Procedure> check(Idea idea) {
        return proof(idea).map(Proof::check);
    }

    private Optional<Proof> proof(Idea idea) {
        var causes = new ArrayList<EObject>();
        idea.notes().stream().map(FieldNote::getCause).filter(it -> it != null).forEach(causes::add);
        idea.component().ifPresent(it -> causes.addAll(it.getCauses()));
        return causes.stream().map(library::resolve).flatMap(Optional::stream).filter(Cause.class::isInstance)
                .map(Cause.class::cast).filter(it -> it.getCheck() != null).flatMap(it -> library.resolve(it.getCheck())
                        .filter(Procedure.class::isInstance).map(check -> new Proof(it, (Procedure) check)).stream())
                .filter(proof -> idea.procedure().filter(work -> work.getId().equals(proof.check().getId())).isEmpty()).findFirst();
    }

    /** Finding out with the later job, testing now, and what is ruined. */
    Assumptions add(Assumptions figures, Idea idea, Plan without, Plan apart) {
        var found = figures;
        var check = check(idea);
        if (check.isPresent()) {
            var title = "'" + title(check.get()) + "'";
            found = found.and(Figure.FINDING, more(apart, check.get().getId()).orElse(BigDecimal.ZERO), title + " with that job");
            var now = more(without, check.get().getId());
            found = now.isPresent() ? found.and(Figure.TEST, now.get(), title + " with this job") : found;
            found = telling(found, proof(idea).orElseThrow().cause());
        }
        found = ruins(found, idea, apart);
        var often = found.value(Figure.RUINS_OFTEN).movePointLeft(2);
        return found.and(Figure.SHOP_BESIDE, net(found.value(Figure.FINDING).add(found.value(Figure.RUINS).multiply(often)), apart),
                "the customer's, without tax");
    }

    /** How well the check tells, where somebody has written it down beside the cause. */
    private static Assumptions telling(Assumptions figures, Cause cause) {
        if (cause.getCheckFinds() == null) {
            return figures;
        }
        var with = figures.and(Figure.TEST_FINDS, percent(cause.getCheckFinds()), "the machine's page, beside the cause");
        return cause.getCheckBlames() == null ? with.and(Figure.TEST_BLAMES, BigDecimal.ZERO, "taken as none: nobody has written it down")
                : with.and(Figure.TEST_BLAMES, percent(cause.getCheckBlames()), "the machine's page, beside the cause");
    }

    private static BigDecimal percent(BigDecimal written) {
        return written.min(BigDecimal.valueOf(100));
    }

    private static BigDecimal net(BigDecimal gross, Plan plan) {
        var tax = plan.price().taxPercent().orElse(BigDecimal.ZERO).movePointLeft(2).add(BigDecimal.ONE);
        return gross.divide(tax, 2, RoundingMode.HALF_UP);
    }

    private Assumptions ruins(Assumptions figures, Idea idea, Plan apart) {
        var result = figures;
        for (var ruined : idea.component().map(Component::getRuins).stream().flatMap(List::stream).toList()) {
            var component = library.resolve(ruined).filter(Component.class::isInstance).map(Component.class::cast);
            if (component.isPresent()) {
                var cost = renewing(component.get(), apart).or(() -> part(component.get()));
                result = result.and(Figure.RUINS, result.value(Figure.RUINS).add(cost.orElse(BigDecimal.ZERO)),
                        result.find(Figure.RUINS).map(known -> known.from() + "; ").orElse("")
                                + ruined(component.get().getTitle(), cost.isPresent()));
            }
        }
        return result.find(Figure.RUINS).isEmpty() ? result : often(result, idea.component().map(Component::getRuinsPercent));
    }

    private static String ruined(String title, boolean isPriced) {
        return isPriced ? "renewing '" + title + "' with that job" : Proposal.TOO_LOW + "nobody has written down what renewing '" + title + "' costs";
    }

    private static Assumptions often(Assumptions figures, Optional<BigDecimal> written) {
        return written.isPresent() ? figures.and(Figure.RUINS_OFTEN, percent(written.get()), "the machine's page, beside the component")
                : figures.and(Figure.RUINS_OFTEN, BigDecimal.valueOf(100), "taken as every time: nobody has written down how often");
    }

    /** The cheapest procedure that renews it or the assembly it is in, done with that job. */
    private Optional<BigDecimal> renewing(Component ruined, Plan apart) {
        return library.catalogue().rows(Kind.PROCEDURE).filter(row -> !row.status().equals("WITHDRAWN"))
                .flatMap(row -> library.top(row.id()).stream()).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .filter(it -> CHANGES.contains(it.getKind()) && it.getComponent() != null && library
                        .resolve(it.getComponent()).filter(whole -> Ideas.whole((Component) whole).contains(ruined)).isPresent())
                .map(it -> more(apart, it.getId())).flatMap(Optional::stream).min(BigDecimal::compareTo);
    }

    private Optional<BigDecimal> part(Component component) {
        return component.getParts().stream().map(library::resolve).flatMap(Optional::stream).filter(Part.class::isInstance)
                .map(Part.class::cast).filter(it -> it.getSupersededBy() == null && it.getPrice() != null)
                .map(it -> it.getPrice().value()).findFirst();
    }

    /** What one more procedure adds to a plan, with tax; empty if there is no such plan. */
    private Optional<BigDecimal> more(Plan plan, String procedure) {
        try {
            var with = planner.alone(plus(plan.request(), procedure));
            return Optional.of(with.price().total().subtract(plan.price().total()).max(BigDecimal.ZERO));
        } catch (PlanException e) {
            return Optional.empty();
        }
    }

    static PlanRequest plus(PlanRequest request, String... procedures) {
        var all = new ArrayList<>(request.procedures());
        all.addAll(List.of(procedures));
        return new PlanRequest(request.subject(), all, request.open(), request.done(), request.today(), request.fixedLabour());
    }

    private static String title(Procedure procedure) {
        return procedure.getTitle() == null ? procedure.getId() : procedure.getTitle();
    }
}
