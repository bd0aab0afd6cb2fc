// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;
import java.util.function.Function;

import org.benchlore.ui.Ids;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Shows the form of one element and scrolls it; the field with the cursor is always in sight. */
public final class DetailArea {

    private static final int LINE = 24;
    private static final int HEADING = 40;
    private static final int MARGIN = 10;

    private final ScrolledComposite scrolled;
    private final FormScope scope;
    private FormPane pane;
    private Object shown;
    private boolean isLayingOut;

    /**
     * Makes an empty area.
     *
     * @param parent holds it
     * @param scope what the fields of the editor share
     */
    public DetailArea(Composite parent, FormScope scope) {
        this.scope = scope;
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.setShowFocusedControl(true);
        scrolled.setAlwaysShowScrollBars(true);
        scrolled.setData(Ids.WIDGET_ID, "form.detail");
        scrolled.getVerticalBar().setIncrement(LINE);
        scrolled.addListener(SWT.Resize, event -> layOut());
        scope.onRelayout(this::layOutSoon);
    }

    /**
     * Returns what takes the room.
     *
     * @return the scrolled area
     */
    public ScrolledComposite control() {
        return scrolled;
    }

    /**
     * Shows the form of an element, unless it is there already.
     *
     * @param element an element of the working copy
     */
    public void show(EObject element) {
        show(element, content -> new FormPane(scope, content, element));
    }

    /**
     * Shows something with a form in it, unless it is there already.
     *
     * @param key what is shown
     * @param maker fills a grid of one column and returns the form in it
     */
    public void show(Object key, Function<Composite, FormPane> maker) {
        if (key.equals(shown)) {
            return;
        }
        shown = key;
        scrolled.setRedraw(false);
        if (scrolled.getContent() != null) {
            scrolled.getContent().dispose();
        }
        var content = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).spacing(0, 2).applyTo(content);
        pane = maker.apply(content);
        scrolled.setContent(content);
        scrolled.setOrigin(0, 0);
        layOut();
        scrolled.setRedraw(true);
    }

    /**
     * Returns the form that is shown.
     *
     * @return the form, or empty if nothing is shown yet
     */
    public Optional<FormPane> pane() {
        return Optional.ofNullable(pane);
    }

    /** Several fields that change at once are laid out once. */
    private void layOutSoon() {
        if (!isLayingOut) {
            isLayingOut = true;
            scrolled.getDisplay().asyncExec(() -> {
                isLayingOut = false;
                if (!scrolled.isDisposed()) {
                    layOut();
                    scrolled.getDisplay().asyncExec(this::showCursor);
                }
            });
        }
    }

    private void layOut() {
        var content = scrolled.getContent();
        if (content != null) {
            int width = scrolled.getClientArea().width;
            scrolled.setMinSize(width, ((Composite) content).computeSize(width, SWT.DEFAULT, true).y);
            ((Composite) content).layout(true, true);
        }
    }

    private void showCursor() {
        if (scrolled.isDisposed()) {
            return;
        }
        var focus = scrolled.getDisplay().getFocusControl();
        for (Composite above = focus == null ? null : focus.getParent(); above != null; above = above.getParent()) {
            if (above == scrolled.getContent()) {
                // The line that says what is wrong stands below the field and belongs in sight too.
                scrolled.showControl(focus.getParent().getSize().y < scrolled.getSize().y ? focus.getParent() : focus);
                showHeading(focus);
            }
        }
    }

    /** A heading is not cut in two for the sake of the last line of its fields. */
    private void showHeading(Control focus) {
        int below = scrolled.getDisplay().map(focus, scrolled.getContent(), 0, focus.getSize().y).y;
        if (scrolled.getOrigin().y < HEADING && below <= scrolled.getClientArea().height) {
            scrolled.setOrigin(0, 0);
        }
    }
}
