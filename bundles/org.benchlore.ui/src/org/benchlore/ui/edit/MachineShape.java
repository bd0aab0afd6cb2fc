// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import org.benchlore.model.Access;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Component;
import org.benchlore.model.Machine;
import org.benchlore.model.Step;
import org.benchlore.model.Titled;
import org.benchlore.model.Work;
import org.benchlore.store.ElementTitle;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.osgi.util.NLS;

/**
 * A machine with its components and their causes, its accesses with strip and refit, and its chains; {@code plain} puts
 * titles in the place of references.
 */
record MachineShape(Machine root, UnaryOperator<String> plain) implements OutlineShape {

    private static final List<EReference> LISTS = List.of(Literals.MACHINE__COMPONENTS, Literals.MACHINE__ACCESSES,
            Literals.MACHINE__FUNCTIONS);
    private static final Map<EClass, String> ICONS = Map.of(Literals.COMPONENT, "component", Literals.CAUSE, "cause",
            Literals.ACCESS, "access", Literals.FUNCTION, "chain", Literals.STEP, "step", Literals.MACHINE, "machine");

    @Override
    public List<EObject> children(EObject node) {
        if (node instanceof EReference list) {
            return ((List<?>) root.eGet(list)).stream().map(EObject.class::cast).toList();
        }
        if (node instanceof Component component) {
            return Stream.<EObject>concat(component.getCauses().stream(), component.getComponents().stream()).toList();
        }
        if (node instanceof Access access) {
            return Stream.<EObject>of(access.getStrip(), access.getRefit()).filter(work -> work != null).toList();
        }
        return node == root ? List.copyOf(LISTS) : node instanceof Work work ? List.copyOf(work.getSteps()) : List.of();
    }

    @Override
    public String words(EObject node) {
        if (node instanceof EReference list) {
            return NLS.bind(heading(list), ((List<?>) root.eGet(list)).size());
        }
        if (node instanceof Work work) {
            return named(work, work.eContainmentFeature() == Literals.ACCESS__STRIP ? Messages.strip : Messages.refit);
        }
        if (node instanceof Step step) {
            return OutlineShape.words(step, plain);
        }
        return node instanceof Titled titled
                ? titled.getTitle() == null || titled.getTitle().isBlank() ? Messages.stepEmpty : titled.getTitle()
                : ElementTitle.of(root);
    }

    private static String named(Work work, String which) {
        return work.getMinutesUsual() == null ? which
                : NLS.bind(Messages.workWithTime, which, work.getMinutesUsual().toString());
    }

    private static String heading(EReference list) {
        return list == Literals.MACHINE__COMPONENTS ? Messages.components
                : list == Literals.MACHINE__ACCESSES ? Messages.accesses : Messages.chains;
    }

    @Override
    public Optional<String> icon(EObject node) {
        if (node instanceof Work work) {
            return Optional.of(work.eContainmentFeature() == Literals.ACCESS__STRIP ? "strip" : "refit");
        }
        return Optional.ofNullable(ICONS.get(node instanceof EReference list ? list.getEReferenceType()
                : node.eClass()));
    }

    /** Systems are seen at first, with what they are made of; the rest is opened where it is looked for. */
    @Override
    public boolean isOpen(EObject node) {
        return node == root || node instanceof EReference
                || node instanceof Component && node.eContainer() == root;
    }

    @Override
    public String name() {
        return Messages.machineOutlineName;
    }
}
