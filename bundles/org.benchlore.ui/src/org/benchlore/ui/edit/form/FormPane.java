// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The form of one element: its sections, each with its fields in order. */
public final class FormPane {

    private static final int GAP = 8;

    private final FormScope scope;
    private final EObject owner;
    private final List<Field> fields = new ArrayList<>();

    /**
     * Makes the form of an element of its own.
     *
     * @param scope what the fields of the editor share
     * @param parent holds the form, in a grid of one column
     * @param owner the element
     */
    public FormPane(FormScope scope, Composite parent, EObject owner) {
        this(scope, parent, owner, new Mnemonics());
    }

    FormPane(FormScope scope, Composite parent, EObject owner, Mnemonics mnemonics) {
        this.scope = scope;
        this.owner = owner;
        for (var section : Layouts.of(owner.eClass())) {
            create(parent, section, mnemonics);
        }
    }

    private void create(Composite parent, Section section, Mnemonics mnemonics) {
        if (!section.key().isEmpty()) {
            heading(parent, scope.words().section(section.key()));
        }
        var grid = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(GAP, 4).extendedMargins(0, 0, 2, GAP).applyTo(grid);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
        for (var feature : section.fields()) {
            var field = field(feature);
            field.create(grid, mnemonics);
            fields.add(field);
        }
    }

    private static void heading(Composite parent, String words) {
        var heading = new Label(parent, SWT.NONE);
        heading.setText(words.replace("&", "&&"));
        heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        heading.setData("org.eclipse.e4.ui.css.id", "benchlore-heading");
    }

    private Field field(EStructuralFeature feature) {
        if (feature instanceof EReference reference) {
            return reference.isContainment() ? reference.isMany() ? new InnerListField(scope, owner, reference)
                    : new InnerField(scope, owner, reference)
                    : reference.isMany() ? new LinksField(scope, owner, reference) : new LinkField(scope, owner, reference);
        }
        var attribute = (EAttribute) feature;
        if (attribute.getEAttributeType() instanceof EEnum) {
            return attribute.isMany() ? new TicksField(scope, owner, attribute) : new WordField(scope, owner, attribute);
        }
        return attribute.getEAttributeType().getInstanceClass() == boolean.class ? new TickField(scope, owner, attribute)
                : attribute.isMany() ? new LinesField(scope, owner, attribute) : new TextField(scope, owner, attribute);
    }

    /**
     * Returns the element whose form this is.
     *
     * @return an element of the working copy
     */
    public EObject owner() {
        return owner;
    }

    /** Shows what the element holds now. */
    public void refresh() {
        fields.forEach(Field::refresh);
    }

    /** Shows beside each field what is wrong with it now. */
    public void showProblems() {
        fields.forEach(Field::showProblem);
    }

    /** Puts the cursor into the first field. */
    public void focus() {
        if (!fields.isEmpty()) {
            fields.get(0).focus();
        }
    }

    /**
     * Puts the cursor into a field of this element or of one within it.
     *
     * @param place the field
     * @return false if it is in no form that can be opened from here
     */
    public boolean focus(Unread.Place place) {
        if (place.owner() == owner) {
            fields.stream().filter(field -> field.feature == place.feature()).findFirst().ifPresent(Field::focus);
            return true;
        }
        var child = place.owner();
        while (child != null && child.eContainer() != owner) {
            child = child.eContainer();
        }
        return child != null && within(child, place);
    }

    private boolean within(EObject child, Unread.Place place) {
        return fields.stream().filter(field -> field.feature == child.eContainmentFeature()).findFirst()
                .filter(InnerListField.class::isInstance).flatMap(field -> ((InnerListField) field).show(child))
                .map(pane -> pane.focus(place)).orElse(false);
    }

    /**
     * Tells whether a form is one of a step, in which Control and Enter begins the next step.
     *
     * @return true for a step
     */
    public boolean isStep() {
        return owner.eClass() == Literals.STEP;
    }
}
