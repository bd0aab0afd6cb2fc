// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.Way;
import org.benchlore.store.ElementTitle;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** A procedure with its ways and their steps; {@code plain} puts titles in the place of references. */
record ProcedureShape(Procedure root, UnaryOperator<String> plain) implements OutlineShape {

    @Override
    public List<EObject> children(EObject node) {
        return node == root ? List.copyOf(root.getWays())
                : node instanceof Way way && way.getWork() != null ? List.copyOf(way.getWork().getSteps()) : List.of();
    }

    @Override
    public String words(EObject node) {
        if (node instanceof Way way) {
            int number = root.getWays().indexOf(way) + 1;
            return way.getTitle() == null ? NLS.bind(Messages.wayNumber, number) : way.getTitle();
        }
        return node instanceof Step step ? OutlineShape.words(step, plain) : ElementTitle.of(root);
    }

    @Override
    public Optional<String> icon(EObject node) {
        return Optional.empty();
    }

    @Override
    public boolean isOpen(EObject node) {
        return true;
    }

    @Override
    public String name() {
        return Messages.outlineName;
    }
}
