// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Icons;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What becomes of a box, below it: a sign and words, which take no room while there is nothing to say. */
final class State implements Consumer<String> {

    private final Composite line;
    private final Label sign;
    private final Label words;
    private final Icons icons;
    private final Runnable relayout;
    private String icon = "";

    State(Composite parent, String id, int span, Runnable relayout) {
        this.relayout = relayout;
        line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        GridDataFactory.fillDefaults().span(span, 1).grab(true, false).exclude(true).applyTo(line);
        icons = new Icons(line);
        sign = new Label(line, SWT.NONE);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(sign);
        words = new Label(line, SWT.WRAP);
        words.setData(Ids.WIDGET_ID, id);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(words);
        line.setVisible(false);
    }

    /** Sets the sign for the words that come next. */
    void sign(String name) {
        icon = name;
    }

    @Override
    public void accept(String sentence) {
        var text = sentence.replace("&", "&&");
        boolean isThere = !text.isEmpty();
        sign.setImage(isThere && !icon.isEmpty() ? icons.named(icon) : null);
        if (!words.getText().equals(text)) {
            words.setText(text);
            ((GridData) line.getLayoutData()).exclude = !isThere;
            line.setVisible(isThere);
            relayout.run();
        }
    }
}
