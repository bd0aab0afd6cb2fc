// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;

import org.benchlore.ui.edit.form.DetailArea;
import org.benchlore.ui.edit.form.FormPane;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Keys that work in every field of an editor: one more of a list (Alt and its digit, Alt and Enter), the step before,
 * the step after, one more of what is shown.
 */
final class FormKeys {

    private final Composite body;
    private final DetailArea detail;
    private final Optional<OutlinePart> outline;

    private FormKeys(Composite body, DetailArea detail, Optional<OutlinePart> outline) {
        this.body = body;
        this.detail = detail;
        this.outline = outline;
    }

    static void install(Composite body, DetailArea detail, Optional<OutlinePart> outline) {
        var keys = new FormKeys(body, detail, outline);
        Listener filter = keys::pressed;
        var display = body.getDisplay();
        display.addFilter(SWT.KeyDown, filter);
        body.addListener(SWT.Dispose, event -> display.removeFilter(SWT.KeyDown, filter));
    }

    private void pressed(Event event) {
        if (event.widget instanceof Control control && isWithin(control)) {
            int held = event.stateMask & SWT.MODIFIER_MASK;
            boolean used = held == SWT.ALT ? withAlt(event.keyCode, control)
                    : held == SWT.MOD1 && isEnter(event.keyCode) && nextStep();
            if (used) {
                event.doit = false;
                event.type = SWT.None;
            }
        }
    }

    private static boolean isEnter(int key) {
        return key == SWT.CR || key == SWT.KEYPAD_CR;
    }

    private boolean withAlt(int key, Control cursor) {
        if (isEnter(key)) {
            return detail.pane().map(pane -> pane.addAt(cursor)).orElse(false);
        }
        if (key >= '1' && key <= '9') {
            return detail.pane().map(pane -> pane.add(key - '0')).orElse(false);
        }
        return (key == SWT.PAGE_UP || key == SWT.PAGE_DOWN) && go(key == SWT.PAGE_UP ? -1 : 1);
    }

    private boolean go(int by) {
        outline.ifPresent(part -> {
            part.outline().step(by);
            focusForm();
        });
        return outline.isPresent();
    }

    private boolean nextStep() {
        outline.ifPresent(part -> {
            part.addNext();
            focusForm();
        });
        return outline.isPresent();
    }

    private void focusForm() {
        detail.pane().ifPresent(FormPane::focus);
    }

    private boolean isWithin(Control control) {
        var at = control;
        while (at != null && at != body) {
            at = at.getParent();
        }
        return at != null;
    }
}
