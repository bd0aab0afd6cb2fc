// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;

/** Finds what refers, within a file, to an element that is about to go; left alone it would lead to nothing. */
final class InnerLinks {

    private final EditingDomain domain;
    private final EObject going;
    private final List<Command> cuts = new ArrayList<>();

    InnerLinks(EditingDomain domain, EObject going) {
        this.domain = domain;
        this.going = going;
    }

    /** Commands that clear every such reference outside the element itself. */
    List<Command> cut() {
        var root = EcoreUtil.getRootContainer(going);
        cut(root);
        root.eAllContents().forEachRemaining(this::cut);
        return cuts;
    }

    private void cut(EObject owner) {
        if (NewIds.isWithin(owner, going)) {
            return;
        }
        for (var reference : owner.eClass().getEAllReferences()) {
            if (!reference.isContainment() && owner.eIsSet(reference)) {
                cut(owner, reference);
            }
        }
    }

    private void cut(EObject owner, EReference reference) {
        var value = owner.eGet(reference, false);
        if (value instanceof List<?> many) {
            var staying = many.stream().filter(target -> !isGoing(target)).toList();
            if (staying.size() < many.size()) {
                cuts.add(new SetValues(owner, reference, staying));
            }
        } else if (isGoing(value)) {
            cuts.add(new SetCommand(domain, owner, reference, SetCommand.UNSET_VALUE));
        }
    }

    private boolean isGoing(Object target) {
        return target instanceof EObject object && !object.eIsProxy() && NewIds.isWithin(object, going);
    }
}
