// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Icons;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** A reference to one element: typed and completed, shown by its title, cleared and opened with a button each. */
final class LinkField extends Field {

    private static final int WIDTH = 100;

    private final EReference reference;
    private Text text;
    private Button clear;
    private Button open;
    private Completion completion;
    private boolean isRefreshing;

    LinkField(FormScope scope, EObject owner, EReference reference) {
        super(scope, owner, reference);
        this.reference = reference;
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(2, 2).applyTo(holder);
        text = named(new Text(holder, SWT.BORDER | SWT.SINGLE));
        text.setEditable(scope.isEditable());
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
        if (scope.isEditable()) {
            text.setMessage(Messages.typeToChoose);
            text.addModifyListener(event -> typed());
            text.addListener(SWT.FocusOut, event -> left());
        }
        createButtons(holder);
        if (scope.isEditable()) {
            completion = new Completion(holder, text, scope, reference.getEReferenceType(), id(),
                    NLS.bind(Messages.choices, name()), this::take);
        }
    }

    private void createButtons(Composite holder) {
        clear = button(holder, "clear", Messages.clear, () -> set(Optional.empty()));
        open = button(holder, "page", Messages.open, () -> target().ifPresent(scope::open));
    }

    private Button button(Composite holder, String icon, String words, Runnable action) {
        var button = new Button(holder, SWT.PUSH | SWT.FLAT);
        button.setImage(new Icons(button).named(icon));
        button.setToolTipText(NLS.bind(words, name()));
        button.setData(Ids.WIDGET_ID, id() + "." + icon);
        Keys.name(button, NLS.bind(words, name()));
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Optional<Address> target() {
        return scope.targets(owner, reference).stream().findFirst();
    }

    private void typed() {
        if (isRefreshing) {
            return;
        }
        if (text.getText().isBlank()) {
            completion.close();
            set(Optional.empty());
        } else if (text.getText().equals(title())) {
            scope.unread().remove(owner, feature);
        } else {
            scope.unread().put(owner, feature, text.getText(), Messages.chooseOne);
            completion.open();
        }
    }

    /** A name that is the only one to fit needs no choice. The list closes a little after the field is left. */
    private void left() {
        text.getDisplay().asyncExec(() -> {
            if (!text.isDisposed() && !text.isFocusControl() && !completion.hasCursor()) {
                completion.close();
                if (scope.unread().find(owner, feature).isPresent()) {
                    completion.only(text.getText()).ifPresent(this::take);
                }
                ended();
            }
        });
    }

    private void take(Choice choice) {
        set(Optional.of(choice.address()));
        text.setSelection(text.getCharCount());
    }

    private void set(Optional<Address> target) {
        scope.unread().remove(owner, feature);
        if (!target.equals(target())) {
            scope.execute(scope.edits().reference(owner, reference, target));
        }
        refresh();
    }

    private String title() {
        return target().map(scope.choices()::title).orElse("");
    }

    @Override
    void refresh() {
        var shown = scope.unread().find(owner, feature).map(Unread.Typed::text).orElseGet(this::title);
        if (!text.getText().equals(shown)) {
            isRefreshing = true;
            text.setText(shown);
            isRefreshing = false;
        }
        clear.setEnabled(scope.isEditable() && !shown.isEmpty());
        open.setEnabled(target().isPresent());
        showProblem();
    }

    @Override
    void focus() {
        text.setFocus();
    }
}
