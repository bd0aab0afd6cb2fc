// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Finds words in the page: Enter goes on, Shift+Enter goes back, Escape returns to the page. */
final class FindBar {

    private final Composite bar;
    private final StyledText page;
    private final Text field;
    private final Label count;
    private List<Integer> places = List.of();
    private int current;

    FindBar(Composite parent, StyledText page) {
        this.page = page;
        bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(bar);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(8, 4).applyTo(bar);
        new Label(bar, SWT.NONE).setText(Messages.findLabel);
        field = new Text(bar, SWT.SEARCH | SWT.ICON_CANCEL);
        field.setData(Ids.WIDGET_ID, "page.find");
        GridDataFactory.fillDefaults().hint(260, SWT.DEFAULT).applyTo(field);
        count = new Label(bar, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(count);
        field.addModifyListener(event -> search());
        field.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
                go((event.stateMask & SWT.SHIFT) == 0 ? 1 : -1);
            }
        });
        Keys.on(field, SWT.ESC, this::close);
        bar.setVisible(false);
    }

    void open() {
        setShown(true);
        field.setFocus();
        field.selectAll();
    }

    private void close() {
        setShown(false);
        page.setFocus();
    }

    private void setShown(boolean shown) {
        ((GridData) bar.getLayoutData()).exclude = !shown;
        bar.setVisible(shown);
        bar.getParent().layout();
    }

    /** Looks again, since the page has changed. */
    void refresh() {
        if (bar.isVisible()) {
            search();
        }
    }

    private void search() {
        var wanted = field.getText().toLowerCase(Locale.ROOT);
        var found = new ArrayList<Integer>();
        if (!wanted.isEmpty()) {
            var text = page.getText().toLowerCase(Locale.ROOT);
            for (int at = text.indexOf(wanted); at >= 0; at = text.indexOf(wanted, at + wanted.length())) {
                found.add(at);
            }
        }
        places = found;
        current = 0;
        show();
    }

    private void go(int step) {
        if (!places.isEmpty()) {
            current = Math.floorMod(current + step, places.size());
            show();
        }
    }

    private void show() {
        if (places.isEmpty()) {
            count.setText(field.getText().isEmpty() ? "" : Messages.notOnPage);
        } else {
            count.setText(NLS.bind(Messages.placeOf, current + 1, places.size()));
            page.setSelection(places.get(current), places.get(current) + field.getText().length());
            page.showSelection();
        }
    }
}
