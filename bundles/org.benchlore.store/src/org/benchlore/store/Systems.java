// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.Component;
import org.benchlore.model.Machine;

/** The systems of a machine, which are its uppermost components, and what belongs to which. */
public final class Systems {

    private final String path;
    private final Set<String> names = new LinkedHashSet<>();
    private final Map<String, String> systemById = new HashMap<>();

    private Systems(String path) {
        this.path = path;
    }

    /**
     * Reads the systems of a machine.
     *
     * @param library the library
     * @param machine row of the machine
     * @return its systems, none if its file cannot be read
     */
    public static Systems of(Library library, Row machine) {
        var systems = new Systems(machine.path());
        library.top(machine.id()).filter(Machine.class::isInstance).map(Machine.class::cast)
                .ifPresent(found -> found.getComponents().forEach(systems::add));
        return systems;
    }

    private void add(Component system) {
        var name = system.getTitle() == null ? system.getId() : system.getTitle();
        names.add(name);
        place(system, name);
    }

    private void place(Component component, String name) {
        systemById.put(component.getId(), name);
        component.getComponents().forEach(below -> place(below, name));
    }

    /**
     * Returns the names in the machine's own order.
     *
     * @return titles of the uppermost components
     */
    public Stream<String> names() {
        return names.stream();
    }

    /**
     * Returns the systems that an element speaks of.
     *
     * @param row an element's row
     * @return their names, none if it names no component of this machine
     */
    public List<String> of(Row row) {
        return row.components().stream().filter(address -> address.path().equals(path))
                .map(address -> systemById.get(address.id())).filter(name -> name != null).distinct().toList();
    }
}
