// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.util.function.IntConsumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.ActiveShellExpression;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

/** The keys of the minute note, wherever the cursor is in its dialog. */
final class NoteKeys {

    private final Composite area;
    private final Runnable save;
    private final Runnable paste;
    private final IntConsumer number;

    private NoteKeys(Composite area, Runnable save, Runnable paste, IntConsumer number) {
        this.area = area;
        this.save = save;
        this.paste = paste;
        this.number = number;
    }

    /** Listens as long as an area of the dialog lives; {@code number} takes 1 to 9. */
    static void listen(Composite area, Runnable save, Runnable paste, IntConsumer number) {
        var keys = new NoteKeys(area, save, paste, number);
        var display = area.getDisplay();
        Listener listener = keys::key;
        display.addFilter(SWT.KeyDown, listener);
        area.addDisposeListener(event -> display.removeFilter(SWT.KeyDown, listener));
        keys.pasteHere();
    }

    private void key(Event event) {
        if (!(event.widget instanceof Control control) || control.isDisposed() || control.getShell() != area.getShell()) {
            return;
        }
        int held = event.stateMask & SWT.MODIFIER_MASK;
        if (held == SWT.MOD1 && (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR)) {
            event.doit = false;
            save.run();
        } else if (held == SWT.MOD3 && event.keyCode >= '1' && event.keyCode <= '9') {
            event.doit = false;
            number.accept(event.keyCode - '0');
        }
    }

    /** The workbench pastes into text fields by itself; here pictures are pasted as well. */
    private void pasteHere() {
        var handlers = PlatformUI.getWorkbench().getService(IHandlerService.class);
        var pasting = handlers.activateHandler(IWorkbenchCommandConstants.EDIT_PASTE, new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                paste.run();
                return null;
            }
        }, new ActiveShellExpression(area.getShell()));
        area.addDisposeListener(event -> handlers.deactivateHandler(pasting));
    }
}
