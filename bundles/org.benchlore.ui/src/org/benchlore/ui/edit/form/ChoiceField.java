// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/**
 * A field in which what a reference leads to is typed and completed. Typed words that name nothing are kept and
 * refused.
 */
abstract class ChoiceField extends Field {

    private static final int WIDTH = 100;

    final EReference reference;
    Text text;
    private Completion completion;
    private boolean isRefreshing;

    ChoiceField(FormScope scope, EObject owner, EReference reference) {
        super(scope, owner, reference);
        this.reference = reference;
    }

    /** Makes the field itself; the list of choices is made after whatever stands beside it. */
    final void createText(Composite holder, String message) {
        text = named(new Text(holder, SWT.BORDER | SWT.SINGLE));
        text.setEditable(scope.isEditable());
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
        if (scope.isEditable()) {
            text.setMessage(message);
            text.addModifyListener(event -> typed());
            text.addListener(SWT.FocusOut, event -> left());
        }
    }

    final void createChoices(Composite holder) {
        if (scope.isEditable()) {
            var finder = scope.finder(reference.getEReferenceType());
            completion = new Completion(this, holder, text, finder, this::take);
        }
    }

    private void typed() {
        if (isRefreshing) {
            return;
        }
        if (text.getText().isBlank()) {
            completion.close();
            scope.unread().remove(owner, feature);
            emptied();
            showProblem();
        } else if (isChosen(text.getText())) {
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

    /** Shows words without taking them as typed. */
    final void write(String words) {
        if (!text.getText().equals(words)) {
            isRefreshing = true;
            text.setText(words);
            isRefreshing = false;
        }
    }

    /** What was typed and names nothing. */
    final Optional<String> kept() {
        return scope.unread().find(owner, feature).map(Unread.Typed::text);
    }

    abstract void take(Choice choice);

    /** Done when all letters are taken away. */
    void emptied() {
        // Where several are chosen, an empty field says nothing of them.
    }

    /** Whether these are the words of what is chosen already. */
    boolean isChosen(String words) {
        return false;
    }

    @Override
    void focus() {
        text.setFocus();
    }
}
