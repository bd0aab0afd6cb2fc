// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.benchlore.edit.Clip;
import org.eclipse.emf.ecore.EReference;

/** Copies and pastes the elements of a list within a form. */
final class ListClips implements ClipTarget {

    private final InnerListField field;

    ListClips(InnerListField field) {
        this.field = field;
    }

    @Override
    public Optional<Clip> copy() {
        return field.selected().map(element -> Clip.of(field.scope.session(), element));
    }

    @Override
    public void remove() {
        field.removeSelected();
    }

    @Override
    public void paste(Clip clip) {
        field.begin(field.scope.edits().inner().paste(clip, field.owner, (EReference) field.feature, field.next()));
    }
}
