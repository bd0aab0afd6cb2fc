// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.diagnose.Named;
import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.Function;
import org.benchlore.model.Machine;
import org.benchlore.model.Titled;
import org.benchlore.model.YesNo;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** The components, causes and functions of one machine. */
public final class MachineBook {

    private final Library library;
    private final Machine machine;
    private final Address address;
    private final Map<Address, Component> components = new LinkedHashMap<>();
    private final Map<Address, Cause> causes = new LinkedHashMap<>();

    /**
     * Reads a machine.
     *
     * @param library the library
     * @param machine the machine, of the library
     */
    public MachineBook(Library library, Machine machine) {
        this.library = library;
        this.machine = machine;
        this.address = library.addressOf(machine).orElseThrow();
        machine.getComponents().forEach(this::read);
    }

    private void read(Component component) {
        library.addressOf(component).ifPresent(place -> components.put(place, component));
        component.getCauses().forEach(cause -> library.addressOf(cause).ifPresent(place -> causes.put(place, cause)));
        component.getComponents().forEach(this::read);
    }

    /**
     * Returns where the machine stands.
     *
     * @return its address
     */
    public Address address() {
        return address;
    }

    /**
     * Returns the machine.
     *
     * @return it, as it is loaded
     */
    public Machine machine() {
        return machine;
    }

    /**
     * Returns the library.
     *
     * @return the open library
     */
    public Library library() {
        return library;
    }

    /**
     * Returns the components, each before what it is made of.
     *
     * @return component by address
     */
    public Map<Address, Component> components() {
        return components;
    }

    /**
     * Returns the causes of all components.
     *
     * @return cause by address
     */
    public Map<Address, Cause> causes() {
        return causes;
    }

    /**
     * Returns the functions.
     *
     * @return the functions
     */
    public List<Function> functions() {
        return machine.getFunctions();
    }

    /**
     * Returns the states in which it can be opened.
     *
     * @return the accesses
     */
    public List<Access> accesses() {
        return machine.getAccesses();
    }

    /**
     * Returns a component with all that it is part of, itself first.
     *
     * @param component a component of this machine
     * @return addresses from the inside out
     */
    public List<Address> upwards(Component component) {
        var found = new ArrayList<Address>();
        for (EObject at = component; at instanceof Component one; at = one.eContainer()) {
            library.addressOf(one).ifPresent(found::add);
        }
        return found;
    }

    /**
     * Tells whether the failure of a component can hurt somebody.
     *
     * @param component a component of this machine
     * @return true if it or what it is part of is marked so
     */
    public boolean isCritical(Component component) {
        for (EObject at = component; at instanceof Component one; at = one.eContainer()) {
            if (one.getSafetyCritical() == YesNo.YES) {
                return true;
            }
        }
        return false;
    }

    /**
     * Tells whether a component belongs to a function's chain.
     *
     * @param component a component
     * @param function a function
     * @return true if it does
     */
    public boolean isIn(Component component, Function function) {
        var wanted = library.addressOf(function);
        return wanted.isPresent() && component.getFunctions().stream()
                .anyMatch(one -> library.addressOf(one).equals(wanted));
    }

    /**
     * Returns a titled element as it is called.
     *
     * @param titled an element of this machine or a reference to one of any file
     * @return its name, or empty if it leads to nothing
     */
    public Optional<Named> named(EObject titled) {
        return library.resolve(titled).filter(Titled.class::isInstance).map(Titled.class::cast)
                .flatMap(one -> library.addressOf(one).map(place -> new Named(place, title(one))));
    }

    /**
     * Returns a title.
     *
     * @param titled an inner element
     * @return its title, else its id
     */
    public static String title(Titled titled) {
        return titled.getTitle() == null || titled.getTitle().isBlank() ? String.valueOf(titled.getId())
                : titled.getTitle();
    }
}
