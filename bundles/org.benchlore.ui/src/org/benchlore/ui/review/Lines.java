// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Makes the lines and texts of the dialogs of this package. */
final class Lines {

    private static final int WIDTH = 620;
    private static final int HEIGHT = 110;

    private Lines() {
    }

    /** A line that is broken where it is too long. */
    static Label label(Composite area, String id, String words) {
        var label = new Label(area, SWT.WRAP);
        label.setData(Ids.WIDGET_ID, id);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    /** A text that can be read and copied, below its title; the Tab key leaves it. */
    static Text text(Composite area, String id, String title) {
        return text(area, id, title, SWT.READ_ONLY);
    }

    /** A text of several lines below its title; the Tab key leaves it. */
    static Text text(Composite area, String id, String title, int style) {
        new Label(area, SWT.NONE).setText(title);
        var text = new Text(area, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | style);
        text.setData(Ids.WIDGET_ID, id);
        Keys.name(text, title.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(text);
        text.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        return text;
    }
}
