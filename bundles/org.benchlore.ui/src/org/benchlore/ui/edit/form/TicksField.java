// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Several words of a fixed list, each with a tick. Nothing ticked means that nothing was recorded. */
final class TicksField extends Field {

    private static final String NOT_RECORDED = "NOT_RECORDED";
    private static final int WIDTH = 120;

    private final EAttribute attribute;
    private final List<Button> ticks = new ArrayList<>();

    TicksField(FormScope scope, EObject owner, EAttribute attribute) {
        super(scope, owner, attribute);
        this.attribute = attribute;
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        var row = new Composite(holder, SWT.NONE);
        row.setLayout(new RowLayout());
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(row);
        for (var literal : ((EEnum) attribute.getEAttributeType()).getELiterals()) {
            if (!literal.getName().equals(NOT_RECORDED)) {
                var tick = new Button(row, SWT.CHECK);
                tick.setText(Labels.of(literal.getInstance()));
                tick.setData(literal.getInstance());
                tick.setData(Ids.WIDGET_ID, id() + "." + literal.getName());
                tick.setEnabled(scope.isEditable());
                tick.addListener(SWT.Selection, event -> ticked());
                ticks.add(tick);
            }
        }
    }

    private void ticked() {
        var chosen = ticks.stream().filter(Button::getSelection)
                .map(tick -> ((Enumerator) tick.getData()).getName()).toList();
        scope.execute(scope.edits().lines(owner, attribute, chosen));
    }

    @Override
    void refresh() {
        var values = (List<?>) owner.eGet(attribute);
        ticks.forEach(tick -> tick.setSelection(values.contains(tick.getData())));
    }

    @Override
    void focus() {
        ticks.get(0).setFocus();
    }
}
