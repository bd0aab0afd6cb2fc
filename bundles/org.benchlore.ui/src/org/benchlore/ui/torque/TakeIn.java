// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.edit.EditInput;
import org.benchlore.ui.page.ElementInput;
import org.benchlore.ui.page.PageEditor;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;

/** Offers the fastenings of the page that is open, the one under its cursor first; one key takes it in. */
final class TakeIn {

    private final LibrarySession session;
    private final Composite bar;
    private final Combo choice;
    private List<Fastened> offered = List.of();

    TakeIn(Composite parent, LibrarySession session, Consumer<Fastened> taker) {
        this.session = session;
        bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 2).spacing(6, 0).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(bar);
        new Label(bar, SWT.NONE).setText(Messages.fromPage);
        choice = new Combo(bar, SWT.READ_ONLY);
        choice.setData(Ids.WIDGET_ID, "torque.fastening");
        Keys.name(choice, Messages.fromPage);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(choice);
        var take = new Button(bar, SWT.PUSH);
        take.setText(Messages.takeIn);
        take.setData(Ids.WIDGET_ID, "torque.take");
        take.addListener(SWT.Selection, event -> chosen().ifPresent(taker));
        bar.setVisible(false);
    }

    private Optional<Fastened> chosen() {
        return choice.getSelectionIndex() < 0 ? Optional.empty() : Optional.of(offered.get(choice.getSelectionIndex()));
    }

    /** Offers what stands on the page; nothing if it has no fastening. */
    void offer(IEditorPart editor) {
        if (bar.isDisposed()) {
            return;
        }
        offered = editor == null ? List.of() : fastenings(editor.getEditorInput());
        choice.setItems(offered.stream().map(Fastened::title).toArray(String[]::new));
        if (!offered.isEmpty()) {
            choice.select(underCursor(editor));
        }
        bar.setVisible(!offered.isEmpty());
        ((GridData) bar.getLayoutData()).exclude = offered.isEmpty();
        bar.getParent().layout(true, true);
    }

    private List<Fastened> fastenings(IEditorInput input) {
        var path = input instanceof ElementInput element ? element.address().path()
                : input instanceof EditInput edit ? edit.path() : "";
        return path.isEmpty() ? List.of() : session.current()
                .flatMap(opened -> opened.library().library().file(path)).flatMap(file -> file.root())
                .map(Fastened::below).orElse(List.of());
    }

    private int underCursor(IEditorPart editor) {
        if (editor instanceof PageEditor reading && !reading.text().isDisposed()) {
            var text = reading.text();
            var line = text.getLine(text.getLineAtOffset(text.getCaretOffset()));
            for (int i = 0; i < offered.size(); i++) {
                if (!offered.get(i).place().isBlank() && line.contains(offered.get(i).place())) {
                    return i;
                }
            }
        }
        return 0;
    }
}
