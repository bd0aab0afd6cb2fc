// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Objects;
import java.util.Optional;

import org.benchlore.edit.FieldText;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.ui.Ids;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** A field that is written: a short or long text, a quantity as entered, a number, a day. */
final class TextField extends Field {

    private static final int CALM = 700;
    private static final int NARROW = 160;
    private static final int WIDE = 120;

    private final EAttribute attribute;
    private Text text;
    private Optional<TextLinkCompletion> links = Optional.empty();
    private boolean isRefreshing;

    TextField(FormScope scope, EObject owner, EAttribute attribute) {
        super(scope, owner, attribute);
        this.attribute = attribute;
    }

    private boolean isLong() {
        return attribute.getEAttributeType() == Literals.LONG_TEXT;
    }

    private boolean isWords() {
        return attribute.getEAttributeType().getInstanceClass() == String.class;
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        text = named(new Text(holder, SWT.BORDER | (isLong() ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE)));
        var data = GridDataFactory.fillDefaults();
        if (isLong()) {
            data.grab(true, false).hint(WIDE, Layouts.lines(feature) * text.getLineHeight());
            text.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                    || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        } else if (isWords()) {
            data.grab(true, false).hint(WIDE, SWT.DEFAULT);
        } else {
            data.align(SWT.BEGINNING, SWT.FILL).hint(NARROW, SWT.DEFAULT);
        }
        data.applyTo(text);
        scope.words().hint(feature).ifPresent(text::setMessage);
        text.setEditable(scope.isEditable());
        if (isLong() && scope.isEditable()) {
            links = Optional.of(new TextLinkCompletion(this, holder, text));
        }
        text.addModifyListener(event -> typed());
        text.addListener(SWT.FocusOut, event -> ended());
    }

    private void typed() {
        if (isRefreshing) {
            return;
        }
        links.ifPresent(TextLinkCompletion::typed);
        var typed = text.getText();
        attempt(typed, () -> scope.execute(scope.edits().typing(owner, attribute, typed)));
        if (scope.unread().find(owner, feature).isEmpty()) {
            showProblem();
        } else {
            text.getDisplay().timerExec(CALM, () -> {
                if (!text.isDisposed() && text.getText().equals(typed)) {
                    showProblem();
                }
            });
        }
    }

    @Override
    void refresh() {
        var kept = scope.unread().find(owner, feature);
        var shown = kept.map(Unread.Typed::text).orElseGet(this::written);
        if (kept.isPresent() ? text.getText().equals(shown) : isShown()) {
            showProblem();
            return;
        }
        isRefreshing = true;
        int at = text.getCaretPosition();
        text.setText(shown);
        text.setSelection(Math.min(at, shown.length()));
        isRefreshing = false;
        showProblem();
    }

    private String written() {
        var value = owner.eIsSet(attribute) ? owner.eGet(attribute) : null;
        return value == null ? "" : EcoreUtil.convertToString(attribute.getEAttributeType(), value);
    }

    /** Blanks at the end of what is being typed are not in the element and not taken away under the fingers. */
    private boolean isShown() {
        try {
            return Objects.equals(FieldText.read(attribute, text.getText()).orElse(null),
                    owner.eIsSet(attribute) ? owner.eGet(attribute) : null) && (text.isFocusControl() || !isWords()
                            || text.getText().equals(written())) && !(written().isEmpty() && !text.getText().isEmpty()
                                    && !text.isFocusControl());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    @Override
    void focus() {
        text.setFocus();
        text.setData(Ids.WIDGET_ID, id());
    }
}
