// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.benchlore.edit.access.AccessRules;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** One field of a form: a label, a widget, and below it what is wrong with what was typed. */
abstract class Field {

    private static final int LABEL_WIDTH = 150;
    private static final int NARROW_LABEL = 96;
    private static final int NARROW_WINDOW = 1000;

    final FormScope scope;
    final EObject owner;
    final EStructuralFeature feature;
    private ProblemLine problem;
    private Composite holder;

    Field(FormScope scope, EObject owner, EStructuralFeature feature) {
        this.scope = scope;
        this.owner = owner;
        this.feature = feature;
    }

    /** Makes the widgets in a grid of two columns. */
    void create(Composite grid, Mnemonics mnemonics) {
        var label = new Label(grid, SWT.WRAP);
        label.setText(isLabelled() ? mnemonics.mark(name()) : "");
        GridDataFactory.fillDefaults().hint(labelWidth(grid), SWT.DEFAULT).indent(0, 4).applyTo(label);
        holder = new Composite(grid, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(holder);
        GridLayoutFactory.fillDefaults().spacing(4, 2).applyTo(holder);
        createControl(holder, mnemonics);
        problem = new ProblemLine(holder, "problem." + id());
        createBelow(grid);
        refresh();
        showProblem();
    }

    private static int labelWidth(Composite grid) {
        return grid.getShell().getSize().x < NARROW_WINDOW ? NARROW_LABEL : LABEL_WIDTH;
    }

    String name() {
        return scope.words().label(feature);
    }

    String id() {
        return feature.getEContainingClass().getName() + "." + feature.getName();
    }

    /** Whether the label stands before the widget rather than in it. */
    boolean isLabelled() {
        return true;
    }

    abstract void createControl(Composite holder, Mnemonics mnemonics);

    /** Makes what stands below label and widget, as wide as both. */
    void createBelow(Composite grid) {
        // Most fields have nothing there.
    }

    /** Shows what the element holds now. */
    abstract void refresh();

    /** Puts the cursor into the field. */
    abstract void focus();

    /** The form within this field that the cursor is in. */
    Optional<FormPane> paneWith(Control cursor) {
        return Optional.empty();
    }

    /** Shows the form of an element within this field. */
    Optional<FormPane> show(EObject element) {
        return Optional.empty();
    }

    static boolean isWithin(Composite outer, Control inner) {
        var at = inner;
        while (at != null && at != outer) {
            at = at.getParent();
        }
        return at != null;
    }

    /** Gives a widget its id and its name, and what it is for. */
    final <T extends Control> T named(T control) {
        control.setData(Ids.WIDGET_ID, id());
        Keys.name(control, name());
        scope.words().hint(feature).ifPresent(control::setToolTipText);
        return control;
    }

    final void ended() {
        if (scope.isEditable()) {
            scope.session().endTyping();
        }
        showProblem();
    }

    /** Shows what is wrong now. */
    final void showProblem() {
        if (problem != null && !holder.isDisposed() && problem.show(wrong())) {
            scope.relayout();
        }
    }

    private Optional<String> wrong() {
        var typed = scope.unread().find(owner, feature).map(Unread.Typed::reason);
        return typed.isPresent() || !scope.isEditable() ? typed : Required.problem(owner, feature).or(this::circular);
    }

    /** What a file brought along is said; it keeps nobody from saving the rest. */
    private Optional<String> circular() {
        return feature instanceof EReference reference ? AccessRules.problem(owner, reference) : Optional.empty();
    }

    /** Does something that the model may refuse; then it says why beside the field. */
    final void attempt(String typed, Runnable edit) {
        scope.unread().remove(owner, feature);
        try {
            edit.run();
        } catch (IllegalArgumentException e) {
            scope.unread().put(owner, feature, typed, e.getMessage());
        }
    }
}
