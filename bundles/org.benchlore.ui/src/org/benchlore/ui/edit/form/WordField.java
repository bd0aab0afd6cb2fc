// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;

import org.benchlore.page.Labels;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** One word of a fixed list, chosen from a drop-down. */
final class WordField extends Field {

    private final EAttribute attribute;
    private final List<Enumerator> literals;
    private Combo combo;

    WordField(FormScope scope, EObject owner, EAttribute attribute) {
        super(scope, owner, attribute);
        this.attribute = attribute;
        this.literals = ((EEnum) attribute.getEAttributeType()).getELiterals().stream().map(EEnumLiteral::getInstance)
                .toList();
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        combo = named(new Combo(holder, SWT.READ_ONLY | SWT.DROP_DOWN));
        literals.forEach(literal -> combo.add(Labels.of(literal)));
        combo.setVisibleItemCount(literals.size());
        GridDataFactory.swtDefaults().applyTo(combo);
        ComboKeys.install(combo);
        combo.setEnabled(scope.isEditable());
        combo.addListener(SWT.Selection, event -> {
            var chosen = literals.get(combo.getSelectionIndex());
            attempt(combo.getText(), () -> scope.execute(scope.edits().text(owner, attribute, chosen.getName())));
            showProblem();
        });
    }

    @Override
    void refresh() {
        int now = literals.indexOf(owner.eGet(attribute));
        if (combo.getSelectionIndex() != now) {
            combo.select(now);
        }
        showProblem();
    }

    @Override
    void focus() {
        combo.setFocus();
    }
}
