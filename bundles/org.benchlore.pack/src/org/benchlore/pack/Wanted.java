// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.UnknownId;

/** The procedures that a request means, before anybody asks whether they may come along. */
final class Wanted {

    private final Library library;
    private final PackRequest request;

    Wanted(Library library, PackRequest request) {
        this.library = library;
        this.request = request;
    }

    List<Row> rows() throws PackException {
        var found = new LinkedHashMap<String, Row>();
        for (var id : request.procedures()) {
            put(found, row(id, Kind.PROCEDURE));
        }
        for (var id : request.machines()) {
            var machine = row(id, Kind.MACHINE);
            procedures().filter(row -> row.machines().contains(machine.address())).forEach(row -> put(found, row));
        }
        for (var name : request.systems()) {
            var components = system(name);
            procedures().filter(row -> row.components().stream().anyMatch(components::contains)).forEach(row -> put(found, row));
        }
        if (request.isWhole()) {
            procedures().forEach(row -> put(found, row));
        }
        return new ArrayList<>(found.values());
    }

    private static void put(Map<String, Row> found, Row row) {
        found.putIfAbsent(row.path(), row);
    }

    private Row row(String id, Kind kind) throws PackException {
        return library.catalogue().byId(id).filter(row -> row.kind() == kind).orElseThrow(() -> new PackException(
                new UnknownId(library.catalogue(), kind).says(id, kind.word()) + "."));
    }

    private Stream<Row> procedures() {
        return library.catalogue().rows(Kind.PROCEDURE).filter(row -> request.kinds().isEmpty() || isOfKind(row));
    }

    private boolean isOfKind(Row row) {
        return library.top(row.id()).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .filter(procedure -> request.kinds().contains(procedure.getKind())).isPresent();
    }

    private Set<Address> system(String name) throws PackException {
        var found = new HashSet<Address>();
        library.catalogue().rows(Kind.MACHINE).forEach(row -> library.top(row.id()).filter(Machine.class::isInstance)
                .map(Machine.class::cast).ifPresent(machine -> machine.getComponents().stream()
                        .filter(top -> name.equalsIgnoreCase(top.getTitle()) || name.equals(top.getId()))
                        .forEach(top -> collect(row.path(), top, found))));
        if (found.isEmpty()) {
            throw new PackException("No machine has a system '" + name + "': name one of the uppermost components of a machine; 'show ID'"
                    + " lists them.");
        }
        return found;
    }

    private static void collect(String path, Component component, Set<Address> found) {
        if (component.getId() != null) {
            found.add(new Address(path, component.getId()));
        }
        component.getComponents().forEach(inner -> collect(path, inner, found));
    }
}
