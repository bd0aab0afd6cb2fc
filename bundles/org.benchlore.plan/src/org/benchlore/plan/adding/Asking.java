// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Counts;
import org.benchlore.evidence.Evidence;
import org.benchlore.evidence.Findings;
import org.benchlore.evidence.Prior;
import org.benchlore.evidence.Question;
import org.benchlore.evidence.decide.Reason;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Part;
import org.benchlore.model.PartNeed;
import org.benchlore.model.Procedure;
import org.benchlore.model.Unit;
import org.benchlore.model.YesNo;
import org.benchlore.plan.PlanRequest;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** Asks the evidence about an idea, and says why it is thought of. */
final class Asking {

    private static final Counts NO_JOBS = new Counts(0, 0, 0, 0, 0, 0, 0, 0);

    private final Library library;
    private final Evidence evidence;
    private final CountingRules rules;
    private final PlanRequest request;
    private final Optional<Unit> unit;
    private final OptionalInt months;

    Asking(Library library, Evidence evidence, CountingRules rules, PlanRequest request, Optional<Unit> unit,
            OptionalInt months) {
        this.library = library;
        this.evidence = evidence;
        this.rules = rules;
        this.request = request;
        this.unit = unit;
        this.months = months;
    }

    /** What speaks for an idea; no reason if nothing does. */
    Idea.Speaks speaks(Idea idea, Set<Component> renewed) {
        var address = idea.component().flatMap(library::addressOf);
        var known = address.map(it -> known(it, idea)).orElseGet(() -> noted(idea));
        var reasons = EnumSet.noneOf(Reason.class);
        add(reasons, Reason.NOTE, !idea.notes().isEmpty() || isTold(known));
        add(reasons, Reason.JOBS, known.findings().left().failed() > 0
                || known.before().filter(it -> it.left().failed() > 0).isPresent() || address.filter(this::isComeback).isPresent());
        add(reasons, Reason.LIFE, known.oldPart().flatMap(evidence::life).isPresent());
        add(reasons, Reason.RUINS, idea.component().filter(it -> it.getRuins().stream().map(library::resolve)
                .flatMap(Optional::stream).anyMatch(renewed::contains)).isPresent());
        if (!reasons.isEmpty()) {
            add(reasons, Reason.CAN_HURT, idea.component().filter(it -> it.getSafetyCritical() == YesNo.YES).isPresent());
        }
        return new Idea.Speaks(reasons, known, address);
    }

    private static void add(Set<Reason> reasons, Reason reason, boolean holds) {
        if (holds) {
            reasons.add(reason);
        }
    }

    private static boolean isTold(Known known) {
        return known.findings().prior() instanceof Prior.Tally
                || known.before().filter(it -> it.prior() instanceof Prior.Tally).isPresent();
    }

    /** Whether a comeback on record names the component as failed. */
    boolean isComeback(Address component) {
        return library.catalogue().rows(Kind.JOB).anyMatch(row -> row.job().filter(job -> job.comebackOf().isPresent()
                && job.failed().contains(component)).isPresent());
    }

    private Known known(Address component, Idea idea) {
        var old = unit.flatMap(library::addressOf).flatMap(it -> evidence.partIn(it, component)).or(() -> only(idea));
        var fitted = idea.procedure().flatMap(it -> fitted(it, component))
                .or(() -> idea.addition().map(it -> it.getPart()).flatMap(library::addressOf));
        var findings = ask(component, old, fitted);
        Optional<Findings> before = findings.isKnown() ? Optional.empty()
                : old.flatMap(it -> before(idea.component(), it)).map(it -> ask(component, Optional.of(it), fitted));
        return new Known(findings, old, fitted, before);
    }

    /** The part that must be in it, because no other fits. */
    private Optional<Address> only(Idea idea) {
        return idea.component().map(Component::getParts).filter(parts -> parts.size() == 1).flatMap(parts -> at(parts.get(0)));
    }

    private Findings ask(Address component, Optional<Address> old, Optional<Address> fitted) {
        var question = Question.of(component, request.today()).with(old, fitted);
        if (months.isEmpty()) {
            return evidence.about(question, rules);
        }
        var wear = old.flatMap(evidence::life).flatMap(life -> unit.map(it -> new Wearing(library, it,
                request.today()).chance(life, component, months.getAsInt()))).orElse(OptionalDouble.empty());
        var within = question.within(months.getAsInt());
        return evidence.about(wear.isPresent() ? within.wearing(wear.getAsDouble()) : within, rules);
    }

    /** Where a note names no component its own tally is all there is. */
    private Known noted(Idea idea) {
        var tally = idea.notes().stream().map(FieldNote::getSeen).filter(seen -> seen != null && seen.getCount() != null
                && seen.getOfAbout() != null && seen.getOfAbout() > 0).findFirst();
        Prior prior = tally.<Prior>map(seen -> new Prior.Tally(library.addressOf(idea.notes().get(0)).orElseThrow(),
                seen.getCount(), seen.getOfAbout())).orElseGet(Prior.Nothing::new);
        var trouble = new Prior.Figure(rules.renewTroublePercent() / 100, false).estimate(rules);
        return new Known(new Findings(NO_JOBS, prior, prior.estimate(rules), NO_JOBS, trouble), Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    private Optional<Address> before(Optional<Component> component, Address part) {
        return component.map(Component::getParts).stream().flatMap(List::stream).map(library::resolve)
                .flatMap(Optional::stream).filter(Part.class::isInstance).map(Part.class::cast)
                .filter(it -> at(it.getSupersededBy()).filter(part::equals).isPresent()).findFirst().flatMap(library::addressOf);
    }

    private Optional<Address> at(EObject reference) {
        return reference == null ? Optional.empty() : library.addressOf(reference);
    }

    private Optional<Address> fitted(Procedure procedure, Address component) {
        return procedure.getWays().stream().filter(way -> way.getWork() != null)
                .flatMap(way -> way.getWork().getParts().stream()).filter(use -> use.getNeed() == PartNeed.ALWAYS
                        && use.getPart() != null && at(use.getComponent()).filter(component::equals).isPresent())
                .findFirst().flatMap(use -> at(use.getPart()));
    }
}
