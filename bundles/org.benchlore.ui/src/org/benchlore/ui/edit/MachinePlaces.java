// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.InnerEdits;
import org.benchlore.model.Access;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.Function;
import org.benchlore.model.Machine;
import org.benchlore.model.Step;
import org.benchlore.model.Work;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Where in a machine an element belongs, seen from what is selected in the outline. */
final class MachinePlaces {

    /**
     * A place for an element.
     *
     * @param owner the element that takes it
     * @param list the list, or the place for one
     * @param index where in the list, or the end
     */
    record Place(EObject owner, EReference list, int index) {
    }

    private final Machine machine;
    private final Outline outline;

    MachinePlaces(Machine machine, Outline outline) {
        this.machine = machine;
        this.outline = outline;
    }

    /** What is selected, or the nearest of a type that it is in. */
    <T> Optional<T> up(Class<T> type) {
        for (var at = outline.selected().orElse(null); at != null; at = at.eContainer()) {
            if (type.isInstance(at)) {
                return Optional.of(type.cast(at));
            }
        }
        return Optional.empty();
    }

    /** The type of what is selected, of which one more is the usual next thing. */
    EClass usual() {
        var node = outline.node().orElse(machine);
        return node instanceof EReference list ? list.getEReferenceType()
                : node == machine ? Literals.COMPONENT : node instanceof Work ? Literals.STEP : node.eClass();
    }

    Place of(EClass type) {
        if (type == Literals.COMPONENT) {
            return up(Component.class).map(MachinePlaces::behind)
                    .orElse(new Place(machine, Literals.MACHINE__COMPONENTS, InnerEdits.END));
        }
        if (type == Literals.ACCESS) {
            return up(Access.class).map(MachinePlaces::behind)
                    .orElse(new Place(machine, Literals.MACHINE__ACCESSES, InnerEdits.END));
        }
        if (type == Literals.FUNCTION) {
            return up(Function.class).map(MachinePlaces::behind)
                    .orElse(new Place(machine, Literals.MACHINE__FUNCTIONS, InnerEdits.END));
        }
        return type == Literals.CAUSE ? cause() : type == Literals.STEP ? step() : work(type);
    }

    private Place cause() {
        return up(Cause.class).map(MachinePlaces::behind).or(() -> up(Component.class)
                .map(owner -> new Place(owner, Literals.COMPONENT__CAUSES, InnerEdits.END)))
                .orElseThrow(() -> new IllegalArgumentException(Messages.noComponent));
    }

    private Place step() {
        var step = up(Step.class);
        var work = up(Work.class).or(() -> up(Access.class).map(Access::getStrip));
        return step.map(MachinePlaces::behind).or(() -> work.map(owner ->
                new Place(owner, Literals.WORK__STEPS, InnerEdits.END)))
                .orElseThrow(() -> new IllegalArgumentException(Messages.noWork));
    }

    /** The strip or refit of the access that one is in, whichever it lacks. */
    private Place work(EClass type) {
        return up(Access.class).filter(access -> type == Literals.WORK).map(access -> new Place(access,
                access.getStrip() == null ? Literals.ACCESS__STRIP : Literals.ACCESS__REFIT, InnerEdits.END))
                .orElseThrow(() -> new IllegalArgumentException(Messages.notHere));
    }

    /** Within the selected component, behind what is in it. */
    Place within() {
        return up(Component.class).map(owner -> new Place(owner, Literals.COMPONENT__COMPONENTS, InnerEdits.END))
                .orElseThrow(() -> new IllegalArgumentException(Messages.noComponent));
    }

    /** Within the component that stands before it. */
    Optional<Place> deeper(Component component) {
        int at = siblings(component).indexOf(component);
        return at <= 0 ? Optional.empty() : Optional.of(new Place((EObject) siblings(component).get(at - 1),
                Literals.COMPONENT__COMPONENTS, InnerEdits.END));
    }

    /** Behind the component that it is in. */
    Optional<Place> out(Component component) {
        return component.eContainer() instanceof Component owner ? Optional.of(behind(owner)) : Optional.empty();
    }

    private static Place behind(EObject element) {
        return new Place(element.eContainer(), element.eContainmentFeature(), siblings(element).indexOf(element) + 1);
    }

    private static List<?> siblings(EObject element) {
        return (List<?>) element.eContainer().eGet(element.eContainmentFeature());
    }
}
