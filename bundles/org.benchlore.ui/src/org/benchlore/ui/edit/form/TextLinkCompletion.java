// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Completes the name of another element within a text, from an open brace on. */
final class TextLinkCompletion {

    private static final int MOST = 20;

    private final Text text;
    private final Choices choices;
    private final Completion completion;

    TextLinkCompletion(Field field, Composite holder, Text text) {
        this.text = text;
        this.choices = field.scope.choices();
        this.completion = new Completion(field, holder, text, this::find, this::take);
        text.addListener(SWT.FocusOut, event -> text.getDisplay().asyncExec(this::left));
    }

    /** Opens, follows or closes the list as letters come and go. */
    void typed() {
        if (LinkPiece.at(text.getText(), text.getCaretPosition()).isPresent()) {
            completion.open();
        } else if (completion.isOpen()) {
            completion.close();
        }
    }

    private void left() {
        if (!text.isDisposed() && !text.isFocusControl() && !completion.hasCursor() && completion.isOpen()) {
            completion.close();
        }
    }

    private List<Choice> find(String whole) {
        return LinkPiece.at(whole, text.getCaretPosition())
                .map(piece -> choices.findNamed(piece.wanted(), MOST)).orElse(List.of());
    }

    private void take(Choice choice) {
        LinkPiece.at(text.getText(), text.getCaretPosition()).ifPresent(piece -> {
            text.setSelection(piece.start(), piece.end());
            text.insert("{" + choices.kind(choice.address()) + ":" + choice.address().id() + "}");
        });
    }
}
