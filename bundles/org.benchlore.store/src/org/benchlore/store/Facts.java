// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Component;
import org.benchlore.model.Document;
import org.benchlore.model.Element;
import org.benchlore.model.FaultCode;
import org.benchlore.model.FieldNote;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Procedure;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;

/**
 * Draws the facts of a catalogue row out of a loaded element. Facts that many kinds have are found by the type of
 * the feature, so that a new feature of the model is counted without a line here.
 */
final class Facts {

    private final String path;
    private final TopElement top;
    private final Set<Address> machines = new LinkedHashSet<>();
    private final Set<Address> components = new LinkedHashSet<>();
    private final Set<Address> references = new LinkedHashSet<>();
    private final Set<String> codes = new LinkedHashSet<>();
    private final Set<String> symptoms = new LinkedHashSet<>();
    private final Set<String> innerIds = new TreeSet<>();
    private final List<Object> naming = new ArrayList<>();

    private Facts(String path, TopElement top) {
        this.path = path;
        this.top = top;
    }

    static Row of(String path, TopElement top, Kind kind) {
        return new Facts(path, top).row(kind);
    }

    private Row row(Kind kind) {
        naming.add(ElementTitle.of(top));
        collect(top);
        top.eAllContents().forEachRemaining(this::collect);
        if (top instanceof Machine) {
            machines.add(new Address(path, top.getId()));
        }
        if (top instanceof FaultCode code) {
            codes.add(code.getCode() == null ? code.getId() : code.getCode());
        }
        return new Row(new Address(path, top.getId()), kind, ElementTitle.of(top), status(), date(), top.isInvented(),
                List.copyOf(machines), List.copyOf(components), List.copyOf(codes), numbers(), List.copyOf(symptoms),
                cause(), List.copyOf(references), Set.copyOf(innerIds), new KindFactsReader(this::target).read(top),
                naming.hashCode());
    }

    private void collect(EObject object) {
        if (object instanceof Element element && object != top && element.getId() != null) {
            innerIds.add(element.getId());
            naming.add(element.getId());
        }
        if (object != top && object instanceof Titled titled) {
            naming.add(titled.getTitle() == null ? "" : titled.getTitle());
            naming.add(object instanceof Component component ? List.copyOf(component.getNames()) : List.of());
            naming.add(object.eContainer() instanceof Element above && above.getId() != null ? above.getId() : "");
        }
        for (var feature : object.eClass().getEAllStructuralFeatures()) {
            if (feature instanceof EReference reference && !reference.isContainment()) {
                targets(object, reference).forEach(target -> refer(reference.getEReferenceType(), target));
            } else if (feature instanceof EAttribute attribute) {
                words(object, attribute);
            }
        }
    }

    private void refer(EClass type, Address target) {
        references.add(target);
        if (type == Literals.MACHINE) {
            machines.add(target);
        } else if (type == Literals.COMPONENT) {
            components.add(target);
            if (target.path().startsWith(Kind.MACHINE.folder() + "/")) {
                machines.add(new Address(target.path(), idOf(target.path())));
            }
        }
    }

    private static String idOf(String path) {
        return path.substring(path.lastIndexOf('/') + 1).replace(Kind.ENDING, "");
    }

    private void words(EObject object, EAttribute attribute) {
        if (attribute.getEAttributeType() == Literals.LONG_TEXT && object.eGet(attribute) instanceof String text) {
            references.addAll(TextReferences.in(text));
        }
        switch (attribute.getName()) {
            case "symptoms" -> symptoms.addAll(texts(object, attribute));
            case "codesAsWritten", "written" -> codes.addAll(texts(object, attribute));
            default -> { }
        }
    }

    @SuppressWarnings("unchecked")
    private static Collection<String> texts(EObject object, EAttribute attribute) {
        return (Collection<String>) object.eGet(attribute);
    }

    private List<Address> targets(EObject object, EReference reference) {
        var value = object.eGet(reference, false);
        if (value == null) {
            return List.of();
        }
        var found = new ArrayList<Address>();
        for (var one : value instanceof Collection<?> many ? many : List.of(value)) {
            target((EObject) one).ifPresent(found::add);
        }
        return found;
    }

    private Optional<Address> target(EObject object) {
        if (object == null) {
            return Optional.empty();
        }
        if (object.eIsProxy()) {
            return LibraryUris.target((InternalEObject) object);
        }
        return object instanceof Element element && element.getId() != null
                ? Optional.of(new Address(path, element.getId())) : Optional.empty();
    }

    /** Numbers by which people ask for it, found by name, so that a new kind is found without a line here. */
    private List<String> numbers() {
        var found = new ArrayList<String>();
        for (var name : List.of("number", "serial")) {
            var feature = top.eClass().getEStructuralFeature(name);
            if (feature != null && top.eGet(feature) instanceof String number && !number.isBlank()) {
                found.add(number);
            }
        }
        return List.copyOf(found);
    }

    /** What names a successor counts as superseded, whatever else is said of it. */
    private String status() {
        var successor = top.eClass().getEStructuralFeature("supersededBy");
        if (successor != null && top.eGet(successor, false) != null) {
            return NoteStatus.SUPERSEDED.getLiteral();
        }
        var feature = top.eClass().getEStructuralFeature(top instanceof JobRecord ? "state" : "status");
        return feature == null ? "" : top.eGet(feature).toString();
    }

    private Optional<LocalDate> date() {
        if (top instanceof FieldNote note) {
            return Optional.ofNullable(note.getDate());
        }
        if (top instanceof JobRecord job) {
            return Optional.ofNullable(job.getOpened());
        }
        if (top instanceof Document document) {
            return Optional.ofNullable(document.getDate());
        }
        return top instanceof Procedure procedure ? Optional.ofNullable(procedure.getReviewedOn()) : Optional.empty();
    }

    private Optional<Address> cause() {
        if (top instanceof FieldNote note) {
            return target(note.getCause());
        }
        return top instanceof JobRecord job ? target(job.getCause()) : Optional.empty();
    }
}
