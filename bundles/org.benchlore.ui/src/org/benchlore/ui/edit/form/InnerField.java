// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.benchlore.edit.InnerEdits;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A place for one element within the element: its form, or a button that adds it. */
final class InnerField extends Field {

    private static final int INDENT = 24;

    private final EReference place;
    private final ListKeys keys;
    private Mnemonics mnemonics;
    private Button button;
    private Composite below;
    private FormPane detail;
    private EObject shown;

    InnerField(FormScope scope, EObject owner, EReference place, ListKeys keys) {
        super(scope, owner, place);
        this.place = place;
        this.keys = keys;
    }

    @Override
    void createControl(Composite holder, Mnemonics letters) {
        mnemonics = letters;
        button = new Button(holder, SWT.PUSH);
        button.setData(Ids.WIDGET_ID, id());
        button.setEnabled(scope.isEditable());
        Keys.name(button, Messages.add + " / " + Messages.remove + ": " + name());
        GridDataFactory.swtDefaults().applyTo(button);
        button.addListener(SWT.Selection, event -> addOrRemove());
    }

    @Override
    void createBelow(Composite grid) {
        below = new Composite(grid, SWT.NONE);
        GridLayoutFactory.fillDefaults().extendedMargins(isWhole() ? 0 : INDENT, 0, 0, 0).applyTo(below);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).exclude(true).applyTo(below);
    }

    /** A way is nothing without its work, so that is never taken out and stands as if it were the way itself. */
    private boolean isWhole() {
        return place == Literals.WAY__WORK;
    }

    /** Strip and refit have their steps in the outline, where they are removed if at all. */
    private boolean isKept() {
        return isWhole() || place == Literals.ACCESS__STRIP || place == Literals.ACCESS__REFIT;
    }

    private EObject value() {
        return (EObject) owner.eGet(place);
    }

    private void addOrRemove() {
        if (value() == null) {
            scope.execute(scope.edits().inner().add(owner, place, place.getEReferenceType(), InnerEdits.END).edit());
            refresh();
            detail.focus();
        } else {
            scope.execute(scope.edits().inner().remove(value()));
            refresh();
            button.setFocus();
        }
    }

    @Override
    void refresh() {
        button.setText(value() == null ? Messages.add : Messages.remove);
        button.setVisible(value() == null || !isKept());
        ((GridData) button.getLayoutData()).exclude = !button.getVisible();
        if (value() == shown) {
            if (detail != null) {
                detail.refresh();
            }
            return;
        }
        shown = value();
        for (var child : below.getChildren()) {
            child.dispose();
        }
        detail = shown == null ? null : FormPane.within(scope, below, shown, mnemonics,
                isWhole() ? Optional.of(keys) : Optional.empty());
        ((GridData) below.getLayoutData()).exclude = shown == null;
        below.setVisible(shown != null);
        scope.relayout();
    }

    @Override
    Optional<FormPane> show(EObject element) {
        return Optional.ofNullable(detail).filter(pane -> pane.owner() == element);
    }

    @Override
    Optional<FormPane> paneWith(Control cursor) {
        return Optional.ofNullable(detail).filter(pane -> isWithin(below, cursor));
    }

    @Override
    void focus() {
        if (detail == null) {
            button.setFocus();
        } else {
            detail.focus();
        }
    }
}
