// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.benchlore.ui.Keys;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/**
 * A list below a text field of what fits the letters typed: arrows choose, Enter takes, Escape closes it, Control and
 * blank opens it. It stands in the form itself, since a window of its own would take the keyboard on some desktops.
 */
final class Completion {

    private final Text text;
    private final Finder finder;
    private final Consumer<Choice> taken;
    private final RowTable rows;
    private final Runnable relayout;
    private List<Supplier<Optional<Choice>>> shown = List.of();

    /** Makes it below a field whose id and name it takes. */
    Completion(Field field, Composite holder, Text text, Finder finder, Consumer<Choice> taken) {
        this.text = text;
        this.finder = finder;
        this.taken = taken;
        this.rows = new RowTable(holder, field.id() + ".choices", NLS.bind(Messages.choices, field.name()));
        this.relayout = field.scope::relayout;
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
        var letters = text.getText();
        var found = finder.find(letters);
        var choices = found.stream().<Supplier<Optional<Choice>>>map(choice -> () -> Optional.of(choice))
                .collect(Collectors.toCollection(ArrayList::new));
        var lines = found.stream().map(Choice::line).collect(Collectors.toCollection(ArrayList::new));
        finder.offer(letters).ifPresent(line -> {
            lines.add(line);
            choices.add(() -> finder.make(letters));
        });
        show(choices, lines);
    }

    void close() {
        show(List.of(), List.of());
    }

    private void show(List<Supplier<Optional<Choice>>> next, List<String> lines) {
        shown = next;
        boolean resized = rows.show(lines);
        rows.select(0);
        if (resized) {
            relayout.run();
        }
    }

    boolean isOpen() {
        return !shown.isEmpty();
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
        rows.select(Math.floorMod(rows.index().orElse(0) + by, shown.size()));
        rows.table().showSelection();
    }

    private void take() {
        rows.index().filter(at -> at < shown.size()).map(shown::get).flatMap(Supplier::get).ifPresent(choice -> {
            text.setFocus();
            close();
            taken.accept(choice);
        });
    }

    /** What is meant where only one thing can be: the only one that fits, or the only one of this very name. */
    Optional<Choice> only(String words) {
        if (words.isBlank()) {
            return Optional.empty();
        }
        var fitting = finder.find(words);
        var same = fitting.stream().filter(choice -> choice.isNamed(words)).toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : same.size() == 1 ? Optional.of(same.get(0))
                : Optional.empty();
    }
}
