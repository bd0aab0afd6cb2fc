// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.ui.Keys;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/**
 * A list below a text field of what fits the letters typed: arrows choose, Enter takes, Escape closes it, Control and
 * blank opens it. It stands in the form itself, since a window of its own would take the keyboard on some desktops.
 */
final class Completion {

    private static final int MOST = 40;

    private final Text text;
    private final FormScope scope;
    private final EClass type;
    private final Consumer<Choice> taken;
    private final RowTable rows;
    private List<Choice> found = List.of();

    Completion(Composite holder, Text text, FormScope scope, EClass type, String id, String name,
            Consumer<Choice> taken) {
        this.text = text;
        this.scope = scope;
        this.type = type;
        this.taken = taken;
        this.rows = new RowTable(holder, id + ".choices", name);
        text.addListener(SWT.KeyDown, this::pressed);
        // Enter would press the default button of a dialog, Escape close it.
        text.addListener(SWT.Traverse, event -> event.doit &= !isOpen()
                || event.detail != SWT.TRAVERSE_RETURN && event.detail != SWT.TRAVERSE_ESCAPE);
        rows.table().addListener(SWT.MouseUp, event -> take());
        rows.table().addListener(SWT.DefaultSelection, event -> take());
        Keys.on(rows.table(), SWT.ESC, () -> text.setFocus());
    }

    /** Shows what fits what stands in the field now. */
    void open() {
        show(scope.choices().find(type, text.getText(), MOST));
    }

    void close() {
        show(List.of());
    }

    private void show(List<Choice> next) {
        found = next;
        boolean resized = rows.show(next.stream().map(Choice::line).toList());
        rows.select(0);
        if (resized) {
            scope.relayout();
        }
    }

    boolean isOpen() {
        return !found.isEmpty();
    }

    /** Whether the cursor is in the list. */
    boolean hasCursor() {
        return rows.table().isFocusControl();
    }

    private void pressed(Event event) {
        boolean isPlain = (event.stateMask & SWT.MODIFIER_MASK) == 0;
        if (event.keyCode == ' ' && (event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1) {
            event.doit = false;
            open();
        } else if (isOpen() && isPlain) {
            event.doit = !isUsed(event.keyCode);
        }
    }

    private boolean isUsed(int key) {
        switch (key) {
            case SWT.ARROW_DOWN -> move(1);
            case SWT.ARROW_UP -> move(-1);
            case SWT.CR, SWT.KEYPAD_CR -> take();
            case SWT.ESC -> close();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void move(int by) {
        rows.select(Math.floorMod(rows.index().orElse(0) + by, found.size()));
        rows.table().showSelection();
    }

    private void take() {
        rows.index().filter(at -> at < found.size()).map(found::get).ifPresent(choice -> {
            text.setFocus();
            close();
            taken.accept(choice);
        });
    }

    /** What is meant where only one thing can be: the only one that fits, or the only one of this very name. */
    Optional<Choice> only(String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        var fitting = scope.choices().find(type, typed, MOST);
        var same = fitting.stream().filter(choice -> choice.title().equalsIgnoreCase(typed.strip())
                || choice.address().id().equals(typed.strip())).toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : same.size() == 1 ? Optional.of(same.get(0))
                : Optional.empty();
    }
}
