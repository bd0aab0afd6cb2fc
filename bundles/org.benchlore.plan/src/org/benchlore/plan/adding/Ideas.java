// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.model.Addition;
import org.benchlore.model.Component;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/** Collects what could be done besides: from notes that say so, and procedures that renew something of the machine. */
final class Ideas {

    private static final Set<String> SPENT = Set.of("RULED_OUT", "SUPERSEDED");
    private static final Set<ProcedureKind> RENEWING = Set.of(ProcedureKind.RENEW, ProcedureKind.ADJUST,
            ProcedureKind.SERVICE, ProcedureKind.OVERHAUL);

    private final Library library;
    private final Machine machine;
    /** Procedures that are asked for, done, or come with the plan. */
    private final Set<String> taken;
    private final Set<String> doing;

    Ideas(Library library, Machine machine, Set<String> doing, Set<String> taken) {
        this.library = library;
        this.machine = machine;
        this.doing = doing;
        this.taken = taken;
    }

    /** Ideas of notes first, each work once. */
    List<Idea> all() {
        Map<String, Idea> ideas = new LinkedHashMap<>();
        library.catalogue().rows(Kind.NOTE).filter(row -> !SPENT.contains(row.status())).filter(this::isOfMachine).sorted(
                java.util.Comparator.comparing(Row::path)).forEach(row -> library.top(row.id())
                        .filter(FieldNote.class::isInstance).map(FieldNote.class::cast).ifPresent(note -> note(ideas, note)));
        library.catalogue().rows(Kind.PROCEDURE).filter(row -> !row.status().equals("WITHDRAWN")).filter(this::isOfMachine)
                .sorted(java.util.Comparator.comparing(Row::path)).filter(row -> !ideas.containsKey(row.id()))
                .forEach(row -> renewing(row.id()).ifPresent(it -> ideas.put(it.id(), it)));
        return List.copyOf(ideas.values());
    }

    private boolean isOfMachine(Row row) {
        var path = Kind.MACHINE.path(machine.getId());
        return row.machines().stream().anyMatch(one -> one.path().equals(path));
    }

    private void note(Map<String, Idea> ideas, FieldNote note) {
        for (var addition : note.getAddWhileDoing()) {
            var main = addition.getWhileDoing() == null ? "" : id(addition.getWhileDoing());
            var work = procedure(addition.getWork());
            if (doing.contains(main) && work.map(it -> !taken.contains(it.getId())).orElse(true)) {
                var id = work.map(Procedure::getId).orElse(addition.getId());
                var before = ideas.get(id);
                ideas.put(id, before == null ? new Idea(id, work, component(work, note), List.of(note), Optional.of(addition))
                        : new Idea(id, work, before.component(), plus(before.notes(), note), before.addition()));
            }
        }
    }

    private static List<FieldNote> plus(List<FieldNote> notes, FieldNote note) {
        var all = new ArrayList<>(notes);
        all.add(note);
        return List.copyOf(all);
    }

    private Optional<Idea> renewing(String id) {
        return library.top(id).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .filter(it -> RENEWING.contains(it.getKind()) && !taken.contains(id) && it.getIncludes().stream()
                        .map(this::id).noneMatch(doing::contains))
                .map(it -> new Idea(id, Optional.of(it), component(Optional.of(it), null), List.of(), Optional.<Addition>empty()))
                .filter(it -> it.component().isPresent());
    }

    private Optional<Procedure> procedure(EObject reference) {
        return reference == null ? Optional.empty() : library.resolve(reference).filter(Procedure.class::isInstance)
                .map(Procedure.class::cast);
    }

    private Optional<Component> component(Optional<Procedure> work, FieldNote note) {
        return work.map(Procedure::getComponent).or(() -> Optional.ofNullable(note).map(FieldNote::getComponent))
                .flatMap(library::resolve).filter(Component.class::isInstance).map(Component.class::cast);
    }

    private String id(EObject reference) {
        return library.addressOf(reference).map(Address::id).orElse("");
    }

    /** A component and all that it is made of. */
    static Set<Component> whole(Component component) {
        var all = new HashSet<Component>();
        all.add(component);
        component.eAllContents().forEachRemaining(inner -> {
            if (inner instanceof Component part) {
                all.add(part);
            }
        });
        return all;
    }
}
