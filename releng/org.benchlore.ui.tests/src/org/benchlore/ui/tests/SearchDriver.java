// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import java.util.Arrays;

import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Drives the search view. */
final class SearchDriver {

    private final WindowDriver window;
    private final Text field;

    /** Empties the field and puts the cursor into it. */
    SearchDriver(WindowDriver window) {
        this.window = window;
        field = window.find("search.field", Text.class);
        field.setText("");
        window.focus(field);
    }

    Text field() {
        return field;
    }

    Table hits() {
        return window.find("search.hits", Table.class);
    }

    String count() {
        return window.find("search.count", Label.class).getText();
    }

    StyledText preview() {
        return window.find("search.preview", StyledText.class);
    }

    /** Types and waits for the counted answer. */
    Table search(String text) {
        window.type(text);
        window.waitUntil("everything is typed", () -> field.getText().equals(text));
        window.waitUntil("it is counted", () -> window.has("search.hits") && window.has("search.filter.kind")
                && count().matches("\\d+ found"));
        return hits();
    }

    /** Returns how many hits hold every word: those above the heading. */
    static long whole(Table hits) {
        return Arrays.stream(hits.getItems()).map(TableItem::getText)
                .takeWhile(text -> !text.startsWith("These hold only some")).count();
    }
}
