// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Yes or no, as a tick. */
final class TickField extends Field {

    private final EAttribute attribute;
    private Button tick;

    TickField(FormScope scope, EObject owner, EAttribute attribute) {
        super(scope, owner, attribute);
        this.attribute = attribute;
    }

    @Override
    boolean isLabelled() {
        return false;
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        tick = named(new Button(holder, SWT.CHECK));
        tick.setText(mnemonics.mark(name()));
        tick.setEnabled(scope.isEditable());
        tick.addListener(SWT.Selection, event ->
                scope.execute(scope.edits().value(owner, attribute, tick.getSelection() ? Boolean.TRUE : null)));
    }

    @Override
    void refresh() {
        tick.setSelection(Boolean.TRUE.equals(owner.eGet(attribute)));
    }

    @Override
    void focus() {
        tick.setFocus();
    }
}
