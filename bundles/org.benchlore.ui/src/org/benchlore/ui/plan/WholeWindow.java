// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.Arrays;
import java.util.Set;

import org.benchlore.ui.Ids;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IViewReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

/** Gives a view the whole window as long as somebody works in it; nobody has to know how to get the window back. */
public final class WholeWindow implements IPartListener2 {

    /** Views that take the whole window. */
    private static final Set<String> WIDE = Set.of(Ids.PLAN_VIEW, Ids.ADDING_VIEW, Ids.TORQUE_VIEW,
            Ids.DIAGNOSE_VIEW);

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
        page.setPartState(page.findViewReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        isFilled = true;
    }

    /** Gives the window back, if it was taken. */
    public void giveBack() {
        var shown = page.findViewReference(view);
        var part = shown == null ? left() : shown;
        if (isFilled && part != null) {
            page.setPartState(part, IWorkbenchPage.STATE_RESTORED);
        }
        isFilled = false;
    }

    /** Where the view is closed, its neighbours have the window still. */
    private IViewReference left() {
        return Arrays.stream(page.getViewReferences()).filter(one -> page.getPartState(one) == IWorkbenchPage.STATE_MAXIMIZED)
                .findFirst().orElseGet(() -> page.findViewReference(Ids.SEARCH_VIEW));
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
        if (reference.getId().equals(view)) {
            isFilled = isFilled || page.getPartState(reference) == IWorkbenchPage.STATE_MAXIMIZED;
        } else if (WIDE.contains(reference.getId())) {
            // The other one takes the window over and gives it back.
            isFilled = false;
        } else if (isFilled) {
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
