// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The form of one element: its sections, each with its fields in order. */
public final class FormPane {

    private static final int GAP = 8;

    private final FormScope scope;
    private final EObject owner;
    private final List<Field> fields = new ArrayList<>();
    private final ListKeys keys;

    /**
     * Makes the form of an element of its own.
     *
     * @param scope what the fields of the editor share
     * @param parent holds the form, in a grid of one column
     * @param owner the element
     */
    public FormPane(FormScope scope, Composite parent, EObject owner) {
        this(scope, parent, owner, Layouts.of(owner.eClass()), new Mnemonics(), new ListKeys());
    }

    /**
     * Makes a form of some sections of an element.
     *
     * @param scope what the fields of the editor share
     * @param parent holds the form, in a grid of one column
     * @param owner the element
     * @param keys keys of the sections, as the layout of its class names them
     * @return the form
     */
    public static FormPane sections(FormScope scope, Composite parent, EObject owner, List<String> keys) {
        return new FormPane(scope, parent, owner, Layouts.of(owner.eClass()).stream()
                .filter(section -> keys.contains(section.key())).toList(), new Mnemonics(), new ListKeys());
    }

    private FormPane(FormScope scope, Composite parent, EObject owner, List<Section> sections, Mnemonics mnemonics,
            ListKeys keys) {
        this.keys = keys;
        this.scope = scope;
        this.owner = owner;
        for (var section : sections) {
            create(parent, section, mnemonics);
        }
    }

    /** A form within another one; where it stands for the other one itself its lists have digits as well. */
    static FormPane within(FormScope scope, Composite parent, EObject owner, Mnemonics above, Optional<ListKeys> keys) {
        return new FormPane(scope, parent, owner, Layouts.within(owner.eContainmentFeature(), owner.eClass()),
                new Mnemonics(above), keys.orElseGet(ListKeys::none));
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
            return reference.isContainment() ? reference.isMany() ? new InnerListField(scope, owner, reference, keys)
                    : new InnerField(scope, owner, reference, keys)
                    : reference.isMany() ? new LinksField(scope, owner, reference)
                            : new LinkField(scope, owner, reference);
        }
        var attribute = (EAttribute) feature;
        if (attribute.getEAttributeType() instanceof EEnum) {
            return attribute.isMany() ? new TicksField(scope, owner, attribute)
                    : new WordField(scope, owner, attribute);
        }
        return attribute.getEAttributeType().getInstanceClass() == boolean.class
                ? new TickField(scope, owner, attribute)
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
                .flatMap(field -> field.show(child)).map(pane -> pane.focus(place)).orElse(false);
    }

    /**
     * Adds an element to one of the lists of the form and puts the cursor into its form.
     *
     * @param digit number of the list, from 1
     * @return false if there is no such list or nothing can be added
     */
    public boolean add(int digit) {
        var list = keys.list(digit).filter(found -> scope.isEditable());
        list.ifPresent(InnerListField::add);
        return list.isPresent();
    }

    /**
     * Adds to the first list of the innermost form that the cursor is in; where that form has none, to the list that it
     * belongs to itself.
     *
     * @param cursor the control that has the cursor
     * @return false if nothing can be added there
     */
    public boolean addAt(Control cursor) {
        if (!scope.isEditable()) {
            return false;
        }
        for (var field : fields) {
            var inner = field.paneWith(cursor);
            if (inner.isPresent()) {
                return inner.get().addAt(cursor) || field instanceof InnerListField list && added(list);
            }
        }
        return fields.stream().filter(InnerListField.class::isInstance).findFirst()
                .map(list -> added((InnerListField) list)).orElse(false);
    }

    private static boolean added(InnerListField list) {
        list.add();
        return true;
    }
}
