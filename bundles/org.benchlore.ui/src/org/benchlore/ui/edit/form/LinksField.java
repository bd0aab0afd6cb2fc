// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.benchlore.model.Address;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** References to several elements: a field that adds one, and below it those that are there. */
final class LinksField extends ChoiceField {

    private RowTable rows;

    LinksField(FormScope scope, EObject owner, EReference reference) {
        super(scope, owner, reference);
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        if (scope.isEditable()) {
            createText(holder, Messages.typeToAdd);
            createChoices(holder);
        }
        rows = new RowTable(holder, id() + ".rows", NLS.bind(Messages.chosen, name()));
        rows.table().addListener(SWT.DefaultSelection, event -> rows.index().ifPresent(at ->
                scope.open(targets().get(at))));
        if (scope.isEditable()) {
            rows.onRemove(this::remove);
            rows.onMove(this::move);
        }
    }

    @Override
    void take(Choice choice) {
        var refusal = scope.refusal(owner, reference, choice.address());
        if (refusal.isPresent()) {
            scope.unread().put(owner, feature, choice.title(), refusal.get());
            refresh();
            return;
        }
        scope.unread().remove(owner, feature);
        scope.execute(scope.edits().addReference(owner, reference, choice.address()));
        write("");
        refresh();
    }

    private void remove(int at) {
        var left = new ArrayList<>(targets());
        left.remove(at);
        scope.execute(scope.edits().references(owner, reference, left));
    }

    private void move(int from, int to) {
        var moved = new ArrayList<>(targets());
        Collections.swap(moved, from, to);
        scope.execute(scope.edits().references(owner, reference, moved));
        rows.select(to);
    }

    private List<Address> targets() {
        return scope.targets(owner, reference);
    }

    @Override
    void refresh() {
        if (text != null) {
            write(kept().orElse(""));
        }
        if (rows.show(targets().stream().map(scope.choices()::title).toList())) {
            scope.relayout();
        }
        showProblem();
    }

    @Override
    void focus() {
        if (text == null) {
            rows.table().setFocus();
        } else {
            super.focus();
        }
    }
}
