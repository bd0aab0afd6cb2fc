// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.IHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;

/** Lets copy, cut and paste of the workbench work on elements while a list of elements has the cursor. */
public final class ClipKeys {

    private final IHandlerService handlers;
    private final ClipBoard board;
    private final Consumer<String> refused;

    /**
     * Makes it for one editor.
     *
     * @param handlers handlers of the editor's site
     * @param board keeps what was copied, for all editors
     * @param refused shows a sentence that says why something could not be pasted
     */
    public ClipKeys(IHandlerService handlers, ClipBoard board, Consumer<String> refused) {
        this.handlers = handlers;
        this.board = board;
        this.refused = refused;
    }

    /**
     * Lets the keys work in a control, from when it has the cursor until it has it no longer.
     *
     * @param control shows the list
     * @param target what is copied from and pasted into
     */
    public void on(Control control, ClipTarget target) {
        List<IHandlerActivation> active = new java.util.ArrayList<>();
        control.addListener(SWT.FocusIn, event -> {
            handlers.deactivateHandlers(active);
            active.clear();
            active.addAll(Arrays.asList(
                    activate(IWorkbenchCommandConstants.EDIT_COPY, () -> copy(target)),
                    activate(IWorkbenchCommandConstants.EDIT_CUT, () -> cut(target)),
                    activate(IWorkbenchCommandConstants.EDIT_PASTE, () -> paste(target))));
        });
        Runnable end = () -> {
            handlers.deactivateHandlers(active);
            active.clear();
        };
        control.addListener(SWT.FocusOut, event -> end.run());
        control.addListener(SWT.Dispose, event -> end.run());
    }

    private IHandlerActivation activate(String command, Runnable action) {
        return handlers.activateHandler(command, handler(action));
    }

    private static IHandler handler(Runnable action) {
        return new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                action.run();
                return null;
            }
        };
    }

    /**
     * Copies what is selected in a list.
     *
     * @param target the list
     * @return false if nothing is selected
     */
    public boolean copy(ClipTarget target) {
        var clip = target.copy();
        clip.ifPresent(board::put);
        return clip.isPresent();
    }

    /**
     * Copies what is selected and removes it.
     *
     * @param target the list
     */
    public void cut(ClipTarget target) {
        if (copy(target)) {
            target.remove();
        }
    }

    /**
     * Pastes the element that was copied last, else lines of text.
     *
     * @param target the list
     */
    public void paste(ClipTarget target) {
        try {
            var clip = board.clip();
            if (clip.isPresent()) {
                target.paste(clip.get());
            } else if (!board.lines().isEmpty()) {
                target.paste(board.lines());
            }
        } catch (IllegalArgumentException e) {
            refused.accept(e.getMessage());
        }
    }
}
