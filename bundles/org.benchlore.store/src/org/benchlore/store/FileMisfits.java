// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Element;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.store.FileProblem.Severity;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;

/** Finds what does not fit together within one file: identities, required values and where references lead. */
final class FileMisfits {

    /** In which kind's files an inner element that others refer to stands. */
    private static final Map<EClass, Kind> OWNERS = Map.of(Literals.PERSON, Kind.SHOP, Literals.COMPONENT, Kind.MACHINE,
            Literals.CAUSE, Kind.MACHINE, Literals.ACCESS, Kind.MACHINE, Literals.FUNCTION, Kind.MACHINE,
            Literals.WAY, Kind.PROCEDURE);

    private final String path;
    private final List<FileProblem> problems = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();

    FileMisfits(String path) {
        this.path = path;
    }

    List<FileProblem> of(TopElement top) {
        check(top);
        top.eAllContents().forEachRemaining(this::check);
        return problems;
    }

    private void check(EObject object) {
        identity(object);
        object.eClass().getEAllAttributes().stream()
                .filter(attribute -> attribute.isRequired() && !attribute.isID() && !object.eIsSet(attribute))
                .forEach(attribute -> misfit(name(object) + " has no '" + attribute.getName() + "': write one"));
        for (var reference : object.eClass().getEAllReferences()) {
            if (!reference.isContainment()) {
                targets(object, reference).forEach(target -> target(reference, target));
            }
        }
    }

    private void identity(EObject object) {
        if (!(object instanceof Element element)) {
            return;
        }
        if (element.getId() == null) {
            misfit(name(object) + " has no id: give it one");
        } else if (!ids.add(element.getId())) {
            misfit("the id '" + element.getId() + "' is used twice in this file: change one");
        }
    }

    private static Collection<?> targets(EObject object, EReference reference) {
        var value = object.eGet(reference, false);
        return value == null ? List.of() : value instanceof Collection<?> many ? many : List.of(value);
    }

    private void target(EReference reference, Object value) {
        var target = (InternalEObject) value;
        if (target.eIsProxy()) {
            proxy(reference, target);
        } else if (target.eResource() == null) {
            problems.add(new FileProblem(path, 0, "the reference '" + reference.getName() + "' holds an element of its"
                    + " own, which cannot be saved: write the id as an attribute, or a href", Severity.READ_ONLY));
        }
    }

    private void proxy(EReference reference, InternalEObject target) {
        var uri = target.eProxyURI();
        if (uri.fragment() == null || uri.fragment().isEmpty()) {
            misfit("the reference '" + uri + "' does not say to which element: end it with # and an id");
            return;
        }
        LibraryUris.target(uri).ifPresentOrElse(address -> kind(reference, address),
                () -> misfit("the reference '" + uri + "' leads out of the library and is not followed"));
    }

    private void kind(EReference reference, Address address) {
        var type = reference.getEReferenceType();
        var kind = Kind.of(type).orElse(OWNERS.get(type));
        if (kind != null && !fits(kind, address)) {
            misfit("'" + reference.getName() + "' must lead into a " + kind.word() + ", not to " + address);
        }
    }

    private static boolean fits(Kind kind, Address address) {
        return kind.isSingle() ? address.path().equals(kind.word() + Kind.ENDING)
                : address.path().startsWith(kind.folder() + "/");
    }

    private static String name(EObject object) {
        return object.eClass().getName();
    }

    private void misfit(String reason) {
        problems.add(new FileProblem(path, 0, reason, Severity.MISFIT));
    }
}
