// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Answer;
import org.benchlore.model.Component;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Offer;
import org.benchlore.model.PartNeed;
import org.benchlore.model.PartUse;
import org.benchlore.model.Procedure;
import org.benchlore.store.Library;
import org.benchlore.store.KindFacts;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Finds declined offers whose work had to be done, or whose component failed, on a later job of the same unit. */
public final class DeclinedWork {

    private final Library library;

    DeclinedWork(Library library) {
        this.library = library;
    }

    /**
     * Work that was declined and failed later.
     *
     * @param offered the job at which it was declined
     * @param what what was offered, in words
     * @param price the price then, as written, or empty
     * @param failed the later job
     * @param why what the two have in common
     */
    public record Case(Row offered, String what, String price, Row failed, Why why) {
    }

    /** What a declined offer and a later job have in common. */
    public enum Why {
        /** The later job did the work that was declined. */
        SAME_WORK,
        /** The later job renewed a component that the work is for. */
        SAME_COMPONENT,
        /** The cause found later is one of a component that the work is for. */
        SAME_CAUSE
    }

    /** Only jobs of a unit that came again are loaded. */
    List<Case> cases() {
        var byUnit = library.catalogue().rows(Kind.JOB).filter(row -> unit(row).isPresent())
                .collect(Collectors.groupingBy(row -> unit(row).orElseThrow()));
        var cases = new ArrayList<Case>();
        byUnit.values().stream().filter(jobs -> jobs.size() > 1).forEach(jobs -> jobs.forEach(job ->
                declined(job).forEach(offer -> later(job, jobs).forEach(other ->
                        why(offer, other).ifPresent(why -> cases.add(new Case(job, words(offer), price(offer), other, why)))))));
        cases.sort(Comparator.comparing((Case one) -> one.failed().date().orElse(LocalDate.MIN)).reversed());
        return cases;
    }

    private static Optional<Address> unit(Row job) {
        return job.job().flatMap(KindFacts.JobFacts::unit);
    }

    private List<Offer> declined(Row row) {
        return library.top(row.id()).filter(JobRecord.class::isInstance).map(JobRecord.class::cast)
                .map(job -> job.getOffers().stream().filter(offer -> offer.getAnswer() == Answer.DECLINED).toList())
                .orElse(List.of());
    }

    private static List<Row> later(Row job, List<Row> jobs) {
        return jobs.stream().filter(other -> other.date().isPresent() && job.date().isPresent()
                && other.date().get().isAfter(job.date().get())).toList();
    }

    private Optional<Why> why(Offer offer, Row later) {
        var facts = later.job().orElseThrow();
        var procedure = library.addressOf(offer.getProcedure());
        if (procedure.filter(facts.done()::contains).isPresent()) {
            return Optional.of(Why.SAME_WORK);
        }
        var components = components(offer);
        if (facts.renewed().stream().anyMatch(components::contains)) {
            return Optional.of(Why.SAME_COMPONENT);
        }
        return later.cause().flatMap(library::element).map(EObject::eContainer).flatMap(library::addressOf)
                .filter(components::contains).map(component -> Why.SAME_CAUSE);
    }

    /**
     * The component of the offered work, and what is in it as far as the work always renews it: a new impeller does not make
     * up for the seal of the same pump.
     */
    private Set<Address> components(Offer offer) {
        var components = new HashSet<Address>();
        library.resolve(offer.getProcedure()).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .ifPresent(procedure -> library.resolve(procedure.getComponent()).ifPresent(whole -> {
                    library.addressOf(whole).ifPresent(components::add);
                    renewed(procedure).filter(inner -> EcoreUtil.isAncestor(whole, inner)).flatMap(DeclinedWork::whole)
                            .flatMap(inner -> library.addressOf(inner).stream()).forEach(components::add);
                }));
        return components;
    }

    private Stream<Component> renewed(Procedure procedure) {
        return all(procedure, PartUse.class).filter(use -> use.getNeed() == PartNeed.ALWAYS)
                .flatMap(use -> library.resolve(use.getComponent()).stream()).filter(Component.class::isInstance)
                .map(Component.class::cast);
    }

    private static Stream<Component> whole(Component component) {
        return Stream.concat(Stream.of(component), all(component, Component.class));
    }

    private static <T> Stream<T> all(EObject element, Class<T> type) {
        var all = new ArrayList<T>();
        element.eAllContents().forEachRemaining(inner -> {
            if (type.isInstance(inner)) {
                all.add(type.cast(inner));
            }
        });
        return all.stream();
    }

    private String words(Offer offer) {
        return offer.getText() != null ? offer.getText() : library.addressOf(offer.getProcedure())
                .flatMap(library.catalogue()::at).map(Row::title).orElse("");
    }

    private static String price(Offer offer) {
        return offer.getPrice() == null ? "" : offer.getPrice().toString();
    }
}
