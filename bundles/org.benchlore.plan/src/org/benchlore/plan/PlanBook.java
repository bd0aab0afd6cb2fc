// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Shop;
import org.benchlore.model.TopElement;
import org.benchlore.model.Unit;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;
import org.benchlore.store.UnknownId;
import org.eclipse.emf.ecore.EObject;

/** Reads from the library what a plan needs, as snapshots; remembers which procedures it met. */
final class PlanBook {

    private final Library library;
    private final Machine machine;
    private final Optional<Unit> unit;
    private final Map<String, Access> accesses = new LinkedHashMap<>();
    private final Map<String, Procedure> met = new LinkedHashMap<>();

    PlanBook(Library library, String subject) throws PlanException {
        this.library = library;
        var top = library.top(subject).orElseThrow(() -> new PlanException(
                new UnknownId(library.catalogue(), Kind.UNIT, Kind.MACHINE).says(subject, "machine or unit"), List.of(subject)));
        this.unit = top instanceof Unit it ? Optional.of(it) : Optional.empty();
        this.machine = machine(top, subject);
        machine.getAccesses().forEach(access -> accesses.put(access.getId(), access));
    }

    private Machine machine(TopElement top, String subject) throws PlanException {
        var found = unit.isPresent() ? library.resolve(unit.get().getMachine()).orElse(null) : top;
        if (found instanceof Machine it) {
            return it;
        }
        throw new PlanException(unit.isPresent() ? "The unit '" + subject + "' names no machine; write down its type"
                : "'" + subject + "' is neither a machine nor a unit; give the id of one", List.of(subject));
    }

    Library library() {
        return library;
    }

    Machine machine() {
        return machine;
    }

    Optional<Unit> unit() {
        return unit;
    }

    Map<String, Access> accesses() {
        return accesses;
    }

    Optional<Shop> shop() {
        return library.top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast);
    }

    Procedure procedure(String id) throws PlanException {
        if (!met.containsKey(id)) {
            met.put(id, library.top(id).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                    .orElseThrow(() -> new PlanException(
                            new UnknownId(library.catalogue(), Kind.PROCEDURE).says(id, "procedure"), List.of(id))));
        }
        return met.get(id);
    }

    /** A procedure that was met before. */
    Procedure known(String id) {
        return met.get(id);
    }

    /** Every procedure that was met. */
    List<Procedure> known() {
        return List.copyOf(met.values());
    }

    /** Ids of referenced procedures, in the order in which they are written down. */
    List<String> ids(List<? extends EObject> references) {
        return references.stream().map(library::addressOf).flatMap(Optional::stream).map(Address::id).distinct().toList();
    }

    /** Ids of those accesses that are of this machine. */
    List<String> ofThisMachine(List<Access> references) {
        return references.stream().map(library::addressOf).flatMap(Optional::stream)
                .filter(address -> address.path().equals(path())).map(Address::id).distinct().toList();
    }

    String path() {
        return Kind.MACHINE.path(machine.getId());
    }

    /** Everything that is done by doing these, themselves included. */
    Set<String> withIncluded(List<String> ids) throws PlanException {
        return closure(ids, Follow.INCLUDES);
    }

    /** Everything that must be done before these. */
    Set<String> before(String id) throws PlanException {
        var found = closure(List.of(id), Follow.BEFORE);
        found.remove(id);
        return found;
    }

    private enum Follow {
        INCLUDES, BEFORE
    }

    private Set<String> closure(List<String> ids, Follow follow) throws PlanException {
        var found = new LinkedHashSet<String>();
        var left = new ArrayList<>(ids);
        while (!left.isEmpty()) {
            var id = left.remove(0);
            if (found.add(id)) {
                var procedure = procedure(id);
                left.addAll(ids(follow == Follow.INCLUDES ? procedure.getIncludes() : procedure.getBefore()));
            }
        }
        return found;
    }
}
