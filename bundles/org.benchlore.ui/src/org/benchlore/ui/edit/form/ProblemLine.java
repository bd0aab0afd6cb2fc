// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Icons;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A sign and a sentence below a field, which takes no room while there is nothing to say. */
final class ProblemLine {

    private static final int WIDTH = 200;

    private final Composite parent;
    private final String id;
    private Composite line;
    private Label words;

    ProblemLine(Composite parent, String id) {
        this.parent = parent;
        this.id = id;
    }

    /** Shows a sentence or nothing; tells whether the form must be laid out anew. */
    boolean show(Optional<String> sentence) {
        var text = sentence.map(said -> said.replace("&", "&&")).orElse("");
        if (line == null && text.isEmpty() || line != null && words.getText().equals(text)) {
            return false;
        }
        if (line == null) {
            create();
        }
        words.setText(text);
        ((GridData) line.getLayoutData()).exclude = text.isEmpty();
        line.setVisible(!text.isEmpty());
        return true;
    }

    private void create() {
        line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).span(columns(), 1).applyTo(line);
        var sign = new Label(line, SWT.NONE);
        sign.setImage(new Icons(sign).named("error"));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(sign);
        words = new Label(line, SWT.WRAP);
        words.setData(Ids.WIDGET_ID, id);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(words);
    }

    private int columns() {
        return parent.getLayout() instanceof GridLayout grid ? grid.numColumns : 1;
    }
}
