// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.ui.page.text.PageText;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;

/** Follows links with the mouse, and with Tab and Enter. */
final class PageLinks {

    private final StyledText text;
    private final Consumer<Address> opener;
    private PageText page;

    PageLinks(StyledText text, Consumer<Address> opener) {
        this.text = text;
        this.opener = opener;
        text.addListener(SWT.MouseMove, event -> text.setCursor(
                at(event).isPresent() ? text.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null));
        text.addListener(SWT.MouseUp, this::clicked);
        text.addListener(SWT.Traverse, this::traversed);
        text.addListener(SWT.KeyDown, this::pressed);
    }

    void show(PageText next) {
        page = next;
    }

    private Optional<PageText.LinkPlace> at(Event event) {
        int offset = text.getOffsetAtPoint(new Point(event.x, event.y));
        return page == null || offset < 0 ? Optional.empty() : page.linkAt(offset);
    }

    private void clicked(Event event) {
        if (event.button == 1 && text.getSelectionCount() == 0) {
            at(event).ifPresent(link -> opener.accept(link.target()));
        }
    }

    private void pressed(Event event) {
        if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
            page.linkAt(text.getSelection().x).ifPresent(link -> {
                event.doit = false;
                opener.accept(link.target());
            });
        }
    }

    /** Tab goes from link to link and leaves the page behind the last one. */
    private void traversed(Event event) {
        if (event.detail != SWT.TRAVERSE_TAB_NEXT && event.detail != SWT.TRAVERSE_TAB_PREVIOUS
                || (event.stateMask & SWT.CTRL) != 0) {
            return;
        }
        var next = event.detail == SWT.TRAVERSE_TAB_NEXT ? next() : previous();
        event.doit = next.isEmpty();
        next.ifPresent(link -> {
            event.detail = SWT.TRAVERSE_NONE;
            text.setSelection(link.start(), link.start() + link.length());
            text.showSelection();
        });
    }

    private Optional<PageText.LinkPlace> next() {
        var selection = text.getSelection();
        int from = selection.x == selection.y ? selection.x : selection.x + 1;
        return page.links().stream().filter(link -> link.start() >= from).findFirst();
    }

    private Optional<PageText.LinkPlace> previous() {
        int before = text.getSelection().x;
        return page.links().stream().filter(link -> link.start() < before).reduce((first, second) -> second);
    }
}
