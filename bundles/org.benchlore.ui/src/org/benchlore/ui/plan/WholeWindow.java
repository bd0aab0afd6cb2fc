// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import org.benchlore.ui.Ids;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

/** Gives the plan the whole window as long as somebody works in it; nobody has to know how to get the window back. */
final class WholeWindow implements IPartListener2 {

    private final IWorkbenchPage page;
    private boolean isFilled;

    WholeWindow(IWorkbenchPage page) {
        this.page = page;
        page.addPartListener(this);
        // The window may have been closed while the plan had all of it.
        var plan = page.findViewReference(Ids.PLAN_VIEW);
        isFilled = plan != null && page.getPartState(plan) == IWorkbenchPage.STATE_MAXIMIZED;
    }

    void fill() {
        page.setPartState(page.findViewReference(Ids.PLAN_VIEW), IWorkbenchPage.STATE_MAXIMIZED);
        isFilled = true;
    }

    /** Gives the window back, if it was taken. */
    void giveBack() {
        var plan = page.findViewReference(Ids.PLAN_VIEW);
        var part = plan == null ? page.findViewReference(Ids.SEARCH_VIEW) : plan;
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
        if (isFilled && !reference.getId().equals(Ids.PLAN_VIEW)) {
            soon();
        }
    }

    @Override
    public void partClosed(IWorkbenchPartReference reference) {
        if (reference.getId().equals(Ids.PLAN_VIEW)) {
            page.removePartListener(this);
            soon();
        }
    }
}
