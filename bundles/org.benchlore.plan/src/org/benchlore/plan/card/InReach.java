// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Way;
import org.benchlore.plan.PlanItem;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/**
 * Finds old parts that a job leaves in place although it had them in reach: components with parts of their own that lie
 * in what was opened, or whose renewing needs nothing but what was opened, and that nothing of the job renews.
 */
public final class InReach {

    private final Library library;
    private final JobRecord job;
    private final Machine machine;
    private final Map<String, Access> opened = new LinkedHashMap<>();
    private final Set<String> renewed = new HashSet<>();

    private InReach(Library library, JobRecord job, Machine machine) {
        this.library = library;
        this.job = job;
        this.machine = machine;
    }

    /**
     * Finds them.
     *
     * @param library the library that the record refers to
     * @param job the record, perhaps a working copy
     * @param cards the cards of its rounds
     * @return components, each with why it is proposed, in the order of the machine's tree
     */
    public static Map<Address, String> of(Library library, JobRecord job, List<Card> cards) {
        return Standing.machine(library, job).map(machine -> new InReach(library, job, machine).find(cards)).orElse(Map.of());
    }

    private Map<Address, String> find(List<Card> cards) {
        job.getRounds().forEach(round -> {
            round.getOpened().forEach(this::open);
            round.getDone().forEach(done -> {
                open(done.getOpened());
                done.getRenewed().forEach(this::renew);
            });
        });
        cards.forEach(this::planned);
        var found = new LinkedHashMap<Address, String>();
        var byWork = byWork();
        machine.eAllContents().forEachRemaining(element -> {
            if (element instanceof Component component && !component.getParts().isEmpty() && !renewed.contains(component.getId())) {
                within(component).or(() -> Optional.ofNullable(byWork.get(component.getId()))).ifPresent(access ->
                        found.put(library.addressOf(component).orElseThrow(), "In reach of '" + title(access) + "' and not renewed"));
            }
        });
        return found;
    }

    private void planned(Card card) {
        card.items().forEach(item -> {
            if (item.part() == PlanItem.Part.STRIP) {
                open(machine.getAccesses().stream().filter(access -> access.getId().equals(item.id())).findFirst().orElse(null));
            }
            item.work().ifPresent(work -> work.getParts().forEach(use -> renew(use.getComponent())));
        });
    }

    private void open(EObject reference) {
        library.resolve(reference).filter(Access.class::isInstance).map(Access.class::cast)
                .filter(access -> opened.putIfAbsent(access.getId(), access) == null)
                .ifPresent(access -> access.getCovers().forEach(this::open));
    }

    private void renew(EObject reference) {
        library.resolve(reference).filter(Component.class::isInstance).map(Component.class::cast).ifPresent(component -> {
            renewed.add(component.getId());
            component.eAllContents().forEachRemaining(inner -> {
                if (inner instanceof Component part) {
                    renewed.add(part.getId());
                }
            });
        });
    }

    /** The opened access in whose component this one lies. */
    private Optional<Access> within(Component component) {
        return Stream.iterate((EObject) component, Component.class::isInstance, EObject::eContainer)
                .flatMap(around -> opened.values().stream().filter(access -> library.resolve(access.getComponent())
                        .filter(around::equals).isPresent())).findFirst();
    }

    /** For components whose renewing needs only what was opened: the access that it needs. */
    private Map<String, Access> byWork() {
        var found = new LinkedHashMap<String, Access>();
        library.catalogue().rows(Kind.PROCEDURE).flatMap(row -> library.top(row.id()).stream())
                .filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .filter(procedure -> procedure.getKind() == ProcedureKind.RENEW)
                .forEach(procedure -> procedure.getWays().forEach(way -> reached(way).ifPresent(access ->
                        renews(procedure, way).forEach(component -> found.putIfAbsent(component, access)))));
        return found;
    }

    private Optional<Access> reached(Way way) {
        var met = way.getNeeds().stream().map(need -> need.getAnyOf().stream().flatMap(access -> library.addressOf(access).stream())
                .map(Address::id).filter(opened::containsKey).findFirst()).toList();
        return met.stream().allMatch(Optional::isPresent) ? met.stream().flatMap(Optional::stream).findFirst().map(opened::get)
                : Optional.empty();
    }

    private Stream<String> renews(Procedure procedure, Way way) {
        var parts = way.getWork() == null ? Stream.<EObject>empty() : way.getWork().getParts().stream().map(use -> use.getComponent());
        return Stream.concat(Stream.of(Optional.ofNullable(procedure.getComponent())), parts.map(Optional::ofNullable))
                .flatMap(Optional::stream).flatMap(reference -> library.addressOf(reference).stream()).map(Address::id);
    }

    private static String title(Access access) {
        return access.getTitle() == null ? access.getId() : access.getTitle();
    }
}
