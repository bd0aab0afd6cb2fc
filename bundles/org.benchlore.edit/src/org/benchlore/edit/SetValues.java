// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Puts a list of values or references in the place of another one; a value may stand twice in it. */
final class SetValues extends AbstractCommand {

    private final EObject owner;
    private final EStructuralFeature feature;
    private final List<?> after;
    private List<?> before;

    SetValues(EObject owner, EStructuralFeature feature, List<?> values) {
        this.owner = owner;
        this.feature = feature;
        this.after = List.copyOf(values);
    }

    @Override
    protected boolean prepare() {
        return feature.isMany() && feature.isChangeable();
    }

    @Override
    public void execute() {
        before = new ArrayList<>((Collection<?>) owner.eGet(feature, false));
        owner.eSet(feature, after);
    }

    @Override
    public void undo() {
        owner.eSet(feature, before);
    }

    @Override
    public void redo() {
        owner.eSet(feature, after);
    }

    @Override
    public Collection<?> getAffectedObjects() {
        return List.of(owner);
    }
}
