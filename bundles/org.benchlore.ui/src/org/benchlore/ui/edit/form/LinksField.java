// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** References to several elements: a field that adds one, and below it those that are there. */
final class LinksField extends Field {

    private static final int WIDTH = 100;

    private final EReference reference;
    private Text text;
    private Completion completion;
    private RowTable rows;

    LinksField(FormScope scope, EObject owner, EReference reference) {
        super(scope, owner, reference);
        this.reference = reference;
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        if (scope.isEditable()) {
            text = named(new Text(holder, SWT.BORDER | SWT.SINGLE));
            text.setMessage(Messages.typeToAdd);
            GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
            text.addModifyListener(event -> typed());
            text.addListener(SWT.FocusOut, event -> left());
            completion = new Completion(holder, text, scope, reference.getEReferenceType(), id(),
                    NLS.bind(Messages.choices, name()), this::add);
        }
        rows = new RowTable(holder, id() + ".rows", NLS.bind(Messages.chosen, name()));
        rows.table().addListener(SWT.DefaultSelection, event -> rows.index().ifPresent(at ->
                scope.open(targets().get(at))));
        if (scope.isEditable()) {
            rows.onRemove(this::remove);
            rows.onMove(this::move);
        }
    }

    private void typed() {
        if (text.getText().isBlank()) {
            completion.close();
            scope.unread().remove(owner, feature);
            showProblem();
        } else {
            scope.unread().put(owner, feature, text.getText(), Messages.chooseOne);
            completion.open();
        }
    }

    private void left() {
        text.getDisplay().asyncExec(() -> {
            if (!text.isDisposed() && !text.isFocusControl() && !completion.hasCursor()) {
                completion.close();
                if (scope.unread().find(owner, feature).isPresent()) {
                    completion.only(text.getText()).ifPresent(this::add);
                }
                ended();
            }
        });
    }

    private void add(Choice choice) {
        scope.execute(scope.edits().addReference(owner, reference, choice.address()));
        text.setText("");
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
        if (text != null && scope.unread().find(owner, feature).isEmpty() && !text.getText().isEmpty()) {
            text.setText("");
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
            text.setFocus();
            text.setData(Ids.WIDGET_ID, id());
            Keys.name(text, name());
        }
    }
}
