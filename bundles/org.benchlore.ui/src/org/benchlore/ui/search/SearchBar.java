// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import org.benchlore.search.Results;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The field, what narrows the search, and how much was found. */
final class SearchBar {

    private final Composite bar;
    private final Text field;
    private final Filters filters;
    private final Label count;

    /** Makes the bar; {@code typed} is run when the text changes, {@code narrowed} when a filter does. */
    SearchBar(Composite parent, Runnable typed, Runnable narrowed) {
        bar = new Composite(parent, SWT.NONE);
        field = new Text(bar, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
        field.setMessage(Messages.fieldHint);
        field.setData(Ids.WIDGET_ID, "search.field");
        Keys.name(field, Messages.fieldName);
        filters = new Filters(bar, narrowed, this::focusField);
        count = new Label(bar, SWT.RIGHT);
        count.setData(Ids.WIDGET_ID, "search.count");
        bar.setLayout(new BarLayout(field, filters.control(), count));
        field.addModifyListener(event -> typed.run());
        Keys.on(field, SWT.ESC, this::escape);
    }

    Composite control() {
        return bar;
    }

    Text field() {
        return field;
    }

    Filters filters() {
        return filters;
    }

    /** Escape clears the field, and in an empty field leaves the filters. */
    private void escape() {
        if (field.getText().isEmpty()) {
            filters.removeAll();
        } else {
            field.setText("");
        }
    }

    /** Puts the cursor into the field, behind what stands there. */
    void focusField() {
        field.setFocus();
        field.setSelection(field.getCharCount());
    }

    void type(String text) {
        field.setText(text);
        focusField();
    }

    void showCount(Results results) {
        var words = results.loosened() ? Messages.foundSome : Messages.foundCount;
        say(NLS.bind(results.isLeast() ? Messages.foundLeast : words, results.total()));
    }

    void showNoCount() {
        say("");
    }

    private void say(String words) {
        if (!words.equals(count.getText())) {
            count.setText(words);
            bar.layout();
        }
    }
}
