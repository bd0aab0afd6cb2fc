// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Several short texts, one a line. */
final class LinesField extends Field {

    private static final int LEAST_LINES = 2;
    private static final int MOST_LINES = 6;
    private static final int WIDTH = 120;

    private final EAttribute attribute;
    private Text text;
    private boolean isRefreshing;

    LinesField(FormScope scope, EObject owner, EAttribute attribute) {
        super(scope, owner, attribute);
        this.attribute = attribute;
    }

    @Override
    void createControl(Composite holder, Mnemonics mnemonics) {
        text = named(new Text(holder, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL));
        int lines = Math.max(LEAST_LINES, Math.min(MOST_LINES, written().size() + 1));
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, lines * text.getLineHeight()).applyTo(text);
        text.setToolTipText(Messages.oneALine);
        text.setEditable(scope.isEditable());
        text.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        text.addModifyListener(event -> typed());
        text.addListener(SWT.FocusOut, event -> ended());
    }

    private void typed() {
        if (!isRefreshing) {
            attempt(text.getText(), () -> {
                var edit = scope.edits().lines(owner, attribute, lines());
                scope.execute(new Edit(edit.label(), edit.command(), Optional.of(EcoreUtil.getURI(owner) + id())));
            });
            showProblem();
        }
    }

    private List<String> lines() {
        return Arrays.stream(text.getText().split("\\R")).map(line -> line.replaceAll("\\s+", " ").strip())
                .filter(line -> !line.isEmpty()).toList();
    }

    private List<String> written() {
        return ((List<?>) owner.eGet(attribute)).stream()
                .map(value -> EcoreUtil.convertToString(attribute.getEAttributeType(), value)).toList();
    }

    @Override
    void refresh() {
        if (scope.unread().find(owner, feature).isEmpty() && !lines().equals(written())) {
            isRefreshing = true;
            text.setText(String.join("\n", written()));
            isRefreshing = false;
        }
        showProblem();
    }

    @Override
    void focus() {
        text.setFocus();
    }
}
