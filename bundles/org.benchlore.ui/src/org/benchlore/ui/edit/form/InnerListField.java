// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.RecordedLists;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * A list of elements within the element: rows, buttons, the form of the selected one below them, and for the lists that
 * matter for safety whether they were written down at all.
 */
final class InnerListField extends Field {

    private static final int INDENT = 24;

    private final EReference list;
    private final ListKeys keys;
    private Mnemonics mnemonics;
    private Optional<RecordedWord> recorded = Optional.empty();
    private RowTable rows;
    private Composite below;
    private FormPane detail;
    private EObject shown;
    private Button add;
    private Button duplicate;
    private Button remove;
    private Button up;
    private Button down;

    InnerListField(FormScope scope, EObject owner, EReference list, ListKeys keys) {
        super(scope, owner, list);
        this.list = list;
        this.keys = keys;
    }

    @Override
    void createControl(Composite holder, Mnemonics letters) {
        mnemonics = letters;
        var bar = new Composite(holder, SWT.NONE);
        var layout = new RowLayout();
        layout.marginLeft = 0;
        layout.center = true;
        bar.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(bar);
        Optional<EAttribute> beside = RecordedLists.fieldOf(list);
        recorded = beside.map(field -> new RecordedWord(bar, this, field));
        createButtons(bar);
        rows = new RowTable(holder, id() + ".rows", name());
        rows.table().addListener(SWT.Selection, event -> showSelected());
        Keys.on(rows.table(), SWT.CR, this::focusForm);
        if (scope.isEditable()) {
            scope.clips().on(rows.table(), new ListClips(this));
            rows.onRemove(at -> removeSelected());
            rows.onMove((from, to) -> move(to - from));
        }
    }

    @Override
    void createBelow(Composite grid) {
        below = new Composite(grid, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(0, 0).extendedMargins(INDENT, 0, 0, 0).applyTo(below);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).exclude(true).applyTo(below);
    }

    private void createButtons(Composite bar) {
        int digit = keys.number(this);
        var words = digit == 0 || !scope.isEditable() ? Messages.add : NLS.bind(Messages.addByKey, digit);
        add = button(bar, "add", words, this::add);
        add.setToolTipText(Messages.addKeys);
        duplicate = button(bar, "duplicate", Messages.duplicate, this::duplicateSelected);
        duplicate.setToolTipText(Messages.duplicateKeys);
        remove = button(bar, "remove", Messages.remove, this::removeSelected);
        remove.setToolTipText(Messages.removeKeys);
        up = button(bar, "up", Messages.up, () -> move(-1));
        up.setToolTipText(Messages.upKeys);
        down = button(bar, "down", Messages.down, () -> move(1));
        down.setToolTipText(Messages.downKeys);
        leadOn(bar);
    }

    /** The other buttons have keys in the rows, so that a person who types is not held up by them. */
    private void leadOn(Composite bar) {
        bar.setTabList(Arrays.stream(bar.getChildren())
                .filter(child -> !(child instanceof Button) || child == add).toArray(Control[]::new));
    }

    private Button button(Composite bar, String key, String words, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id() + "." + key);
        Keys.name(button, words + ": " + name());
        button.addListener(SWT.Selection, event -> action.run());
        button.setEnabled(scope.isEditable());
        return button;
    }

    List<?> elements() {
        return (List<?>) owner.eGet(list);
    }

    Optional<EObject> selected() {
        return rows.index().filter(at -> at < elements().size()).map(at -> (EObject) elements().get(at));
    }

    /** Adds an element behind the selected one and puts the cursor into its form. */
    void add() {
        begin(scope.edits().inner().add(owner, list, Beginnings.of(list.getEReferenceType()), next()));
    }

    /** Where the next element goes: behind the selected one. */
    int next() {
        return rows.index().map(index -> index + 1).orElse(InnerEdits.END);
    }

    boolean isShown() {
        return !rows.table().isDisposed();
    }

    private void focusForm() {
        if (detail != null) {
            detail.focus();
        }
    }

    private void duplicateSelected() {
        selected().ifPresent(element -> begin(scope.edits().inner().duplicate(element)));
    }

    void begin(InnerEdits.Adding adding) {
        scope.execute(adding.edit());
        refresh();
        rows.select(elements().indexOf(adding.element()));
        showSelected();
        focusForm();
    }

    void removeSelected() {
        selected().ifPresent(element -> {
            scope.execute(scope.edits().inner().remove(element));
            refresh();
            showSelected();
        });
    }

    private void move(int step) {
        selected().ifPresent(element -> {
            scope.execute(scope.edits().inner().move(element, elements().indexOf(element) + step));
            refresh();
            rows.select(elements().indexOf(element));
            showSelected();
        });
    }

    private void showSelected() {
        var next = selected().orElse(null);
        if (next != shown) {
            shown = next;
            for (var child : below.getChildren()) {
                child.dispose();
            }
            detail = next == null ? null : FormPane.within(scope, below, next, mnemonics, Optional.empty());
            ((GridData) below.getLayoutData()).exclude = next == null;
            below.setVisible(next != null);
            scope.relayout();
        }
        enable();
    }

    private void enable() {
        boolean canEdit = scope.isEditable() && shown != null;
        // Buttons that could do nothing would take room that narrow windows do not have.
        if (RowButtons.show(canEdit, duplicate, remove, up, down) | RowButtons.show(scope.isEditable(), add)) {
            scope.relayout();
        }
        int at = elements().indexOf(shown);
        duplicate.setEnabled(canEdit);
        remove.setEnabled(canEdit);
        up.setEnabled(canEdit && at > 0);
        down.setEnabled(canEdit && at >= 0 && at < elements().size() - 1);
    }

    @Override
    void refresh() {
        recorded.ifPresent(RecordedWord::refresh);
        boolean moved = rows.show(elements().stream().map(element -> scope.summary((EObject) element)).toList());
        if (shown != null && !elements().contains(shown)) {
            showSelected();
        } else if (detail != null) {
            rows.select(elements().indexOf(shown));
            detail.refresh();
        }
        enable();
        if (moved) {
            scope.relayout();
        }
        showProblem();
    }

    @Override
    void focus() {
        if (elements().isEmpty()) {
            rows.table().getParent().getParent().setFocus();
        } else {
            rows.table().setFocus();
        }
    }

    @Override
    Optional<FormPane> paneWith(Control cursor) {
        return Optional.ofNullable(detail).filter(pane -> isWithin(below, cursor));
    }

    @Override
    Optional<FormPane> show(EObject element) {
        rows.select(elements().indexOf(element));
        showSelected();
        return Optional.ofNullable(detail);
    }
}
