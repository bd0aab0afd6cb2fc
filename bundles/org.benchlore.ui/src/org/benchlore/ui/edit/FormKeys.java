// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Keys that work in every field of an editor: the step before, the step after, a further step. */
final class FormKeys {

    private final Composite body;
    private final OutlinePart outline;

    private FormKeys(Composite body, OutlinePart outline) {
        this.body = body;
        this.outline = outline;
    }

    static void install(Composite body, OutlinePart outline, Runnable focusForm) {
        var keys = new FormKeys(body, outline);
        Listener filter = event -> keys.pressed(event, focusForm);
        var display = body.getDisplay();
        display.addFilter(SWT.KeyDown, filter);
        body.addListener(SWT.Dispose, event -> display.removeFilter(SWT.KeyDown, filter));
    }

    private void pressed(Event event, Runnable focusForm) {
        if (!isWithin(event)) {
            return;
        }
        int held = event.stateMask & SWT.MODIFIER_MASK;
        if (held == SWT.ALT && (event.keyCode == SWT.PAGE_UP || event.keyCode == SWT.PAGE_DOWN)) {
            event.doit = false;
            outline.outline().step(event.keyCode == SWT.PAGE_UP ? -1 : 1);
            focusForm.run();
        } else if (held == SWT.MOD1 && (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR)) {
            event.doit = false;
            outline.addStep();
            focusForm.run();
        }
    }

    private boolean isWithin(Event event) {
        for (var at = event.widget instanceof Control control ? control : null; at != null; at = at.getParent()) {
            if (at == body) {
                return true;
            }
        }
        return false;
    }
}
