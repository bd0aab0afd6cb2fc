// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;

import org.benchlore.ui.Ids;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

/**
 * Gives editors the room of the search view above them: while somebody writes, the search view keeps no more than its
 * field. It has its room again as soon as it is used, a page is read, or the last editor is closed. What it had is kept
 * with the layout of the window, so that it comes back at the next start as well.
 */
public final class EditorRoom implements IPartListener2 {

    /** Height of a tab and the search field, in pixels. */
    private static final int BAR = 80;

    private static final String KEPT = "org.benchlore.ui.roomBeforeEditing";

    private final IWorkbenchPage page;

    private EditorRoom(IWorkbenchPage page) {
        this.page = page;
    }

    /**
     * Watches a page from now on.
     *
     * @param page the page of a window
     */
    public static void watch(IWorkbenchPage page) {
        var room = new EditorRoom(page);
        page.addPartListener(room);
        room.restore();
    }

    @Override
    public void partActivated(IWorkbenchPartReference part) {
        if (Ids.FORM_EDITOR.equals(part.getId())) {
            shrink();
        } else if (part instanceof IEditorReference || Ids.SEARCH_VIEW.equals(part.getId())
                || Ids.DESK_VIEW.equals(part.getId()) || Ids.JOBS_VIEW.equals(part.getId())) {
            restore();
        }
    }

    @Override
    public void partClosed(IWorkbenchPartReference part) {
        if (Ids.FORM_EDITOR.equals(part.getId()) && !hasEditors()) {
            restore();
        }
    }

    private boolean hasEditors() {
        return page.findEditors(null, Ids.FORM_EDITOR, IWorkbenchPage.MATCH_ID).length > 0;
    }

    /** The stack that the search view stands in, if it stands above the pages and not in a window of its own. */
    private Optional<MUIElement> search() {
        var view = page.findViewReference(Ids.SEARCH_VIEW);
        return Optional.ofNullable(view).map(found -> found.getPart(false))
                .map(found -> found.getSite().getService(MPart.class))
                .map(part -> part.getCurSharedRef() != null ? part.getCurSharedRef() : part)
                .map(MUIElement::getParent);
    }

    private void shrink() {
        search().filter(stack -> !stack.getPersistedState().containsKey(KEPT))
                .ifPresent(stack -> beside(stack).ifPresent(pages -> shrink(stack, pages)));
    }

    private static void shrink(MUIElement stack, MUIElement pages) {
        int both = share(stack) + share(pages);
        int height = height(stack);
        int small = height <= 0 ? both : share(stack) * BAR / height;
        if (small < share(stack)) {
            stack.getPersistedState().put(KEPT, stack.getContainerData() + " " + pages.getContainerData());
            stack.setContainerData(String.valueOf(small));
            pages.setContainerData(String.valueOf(both - small));
        }
    }

    private void restore() {
        search().ifPresent(stack -> {
            var kept = stack.getPersistedState().remove(KEPT);
            if (kept != null) {
                var shares = kept.split(" ");
                stack.setContainerData(shares[0]);
                beside(stack).ifPresent(pages -> pages.setContainerData(shares[1]));
            }
        });
    }

    /** What shares its height with the search view. */
    private Optional<MUIElement> beside(MUIElement stack) {
        return stack.getParent() == null || stack.getContainerData() == null ? Optional.empty()
                : stack.getParent().getChildren().stream().map(MUIElement.class::cast)
                        .filter(other -> other != stack && other.isToBeRendered() && other.isVisible()
                                && other.getContainerData() != null).findFirst();
    }

    private static int height(MUIElement element) {
        return element.getWidget() instanceof Control control && !control.isDisposed() ? control.getSize().y : 0;
    }

    private static int share(MUIElement element) {
        try {
            return Integer.parseInt(element.getContainerData());
        } catch (NumberFormatException e) {
            return 0;
        }
    }
}
