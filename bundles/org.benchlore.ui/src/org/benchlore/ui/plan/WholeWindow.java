// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import org.benchlore.ui.Ids;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

/** Gives a view the whole window as long as somebody works in it; nobody has to know how to get the window back. */
public final class WholeWindow implements IPartListener2 {

    private final IWorkbenchPage page;
    private final String view;
    private boolean isFilled;

    /**
     * Makes it.
     *
     * @param page the page of the window
     * @param view id of the view
     */
    public WholeWindow(IWorkbenchPage page, String view) {
        this.page = page;
        this.view = view;
        page.addPartListener(this);
        // The window may have been closed while the view had all of it.
        var shown = page.findViewReference(view);
        isFilled = shown != null && page.getPartState(shown) == IWorkbenchPage.STATE_MAXIMIZED;
    }

    /** Gives it the window. */
    public void fill() {
        take();
        // A view that had the window before gives it back a moment after this one came to the front.
        page.getWorkbenchWindow().getShell().getDisplay().asyncExec(() -> {
            if (isFilled && page.getWorkbenchWindow().getActivePage() != null && page.getActivePartReference() != null
                    && page.getActivePartReference().getId().equals(view)) {
                take();
            }
        });
    }

    private void take() {
        page.setPartState(page.findViewReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        isFilled = true;
    }

    /** Gives the window back, if it was taken. */
    public void giveBack() {
        var shown = page.findViewReference(view);
        var part = shown == null ? page.findViewReference(Ids.SEARCH_VIEW) : shown;
        if (isFilled && part != null) {
            page.setPartState(part, IWorkbenchPage.STATE_RESTORED);
        }
        isFilled = false;
    }

    private void soon() {
        page.getWorkbenchWindow().getShell().getDisplay().asyncExec(() -> {
            if (page.getWorkbenchWindow().getActivePage() != null) {
                giveBack();
            }
        });
    }

    @Override
    public void partActivated(IWorkbenchPartReference reference) {
        if (isFilled && !reference.getId().equals(view)) {
            soon();
        }
    }

    @Override
    public void partClosed(IWorkbenchPartReference reference) {
        if (reference.getId().equals(view)) {
            page.removePartListener(this);
            soon();
        }
    }
}
