// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.store.KindFacts.MachineFacts;

/**
 * Other machines of the family, and what of them is like something of this machine: components with the same id or fitted
 * with the same part number, as the shop's evidence takes them, and their causes with the same id or the same title.
 */
public final class Family {

    private final MachineBook book;
    private final Map<Address, Relative> relatives = new LinkedHashMap<>();
    private final Map<Address, Address> own = new HashMap<>();
    private final Map<Address, Set<Address>> alike = new HashMap<>();

    /**
     * Another machine of the family.
     *
     * @param machine where it stands
     * @param title what it is called
     * @param weight what a case on it counts for, above 0 up to 1
     */
    public record Relative(Address machine, String title, double weight) {
    }

    /**
     * Finds the family of a machine.
     *
     * @param book the machine
     * @param weight what a case on another machine counts for; nobody is looked at if it is 0
     */
    public Family(MachineBook book, double weight) {
        this.book = book;
        var family = book.machine().getFamily();
        if (weight > 0 && family != null && !family.isBlank()) {
            book.library().catalogue().rows(Kind.MACHINE).filter(row -> !row.address().equals(book.address()))
                    .filter(row -> row.facts(MachineFacts.class).filter(one -> one.family().equals(family)).isPresent())
                    .forEach(row -> book.library().top(row.id()).ifPresent(top -> read((Machine) top,
                            new Relative(row.address(), row.title(), weight))));
        }
    }

    private void read(Machine machine, Relative relative) {
        relatives.put(relative.machine(), relative);
        alike.put(relative.machine(), new HashSet<>());
        var other = new MachineBook(book.library(), machine);
        other.components().forEach((place, component) -> like(place, component).ifPresent(mine -> {
            own.put(place, mine);
            alike.get(relative.machine()).add(mine);
            component.getCauses().forEach(cause -> link(cause, book.components().get(mine)));
        }));
    }

    /** The component with the same id, else the first that takes the same part. */
    private Optional<Address> like(Address place, Component component) {
        var same = new Address(book.address().path(), place.id());
        if (book.components().containsKey(same)) {
            return Optional.of(same);
        }
        var parts = parts(component);
        return book.components().entrySet().stream().filter(mine -> parts(mine.getValue()).stream().anyMatch(parts::contains))
                .map(Map.Entry::getKey).findFirst();
    }

    private Set<Address> parts(Component component) {
        return CaseNote.addresses(book.library(), component.getParts());
    }

    private void link(Cause cause, Component mine) {
        book.library().addressOf(cause).ifPresent(place -> mine.getCauses().stream()
                .filter(one -> one.getId().equals(cause.getId())
                        || MachineBook.title(one).equalsIgnoreCase(MachineBook.title(cause)))
                .findFirst().flatMap(book.library()::addressOf).ifPresent(one -> own.put(place, one)));
    }

    /**
     * Returns the other machine that a paper speaks of.
     *
     * @param machines machines it names
     * @return the first of the family; empty if it names none of them, or this machine itself
     */
    public Optional<Relative> of(Collection<Address> machines) {
        return machines.contains(book.address()) ? Optional.empty()
                : machines.stream().sorted().map(relatives::get).filter(java.util.Objects::nonNull).findFirst();
    }

    /**
     * Returns what a cause or component of another machine is on this one.
     *
     * @param place a cause or a component of any machine
     * @return its like of this machine, itself if it is of this machine; empty if there is none
     */
    public Optional<Address> own(Address place) {
        return place.path().equals(book.address().path()) ? Optional.of(place) : Optional.ofNullable(own.get(place));
    }

    /**
     * Tells whether another machine has the like of a component, so that a case there could have been of it.
     *
     * @param machine a machine of the family
     * @param component a component of this machine
     * @return true if it has
     */
    public boolean has(Address machine, Component component) {
        return book.library().addressOf(component).filter(alike.getOrDefault(machine, Set.of())::contains).isPresent();
    }
}
