// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Icons;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The line on top of an editor: what it edits, why it cannot, or how much is to be mended before it can be saved. */
final class FormHead {

    private final Composite line;
    private final Label sign;
    private final Label words;
    private final Button go;
    private final Icons icons;

    FormHead(Composite parent, Runnable goToProblem) {
        line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(10, 4).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        icons = new Icons(line);
        sign = new Label(line, SWT.NONE);
        words = new Label(line, SWT.WRAP);
        words.setData(Ids.WIDGET_ID, "form.head");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(1, SWT.DEFAULT)
                .applyTo(words);
        go = new Button(line, SWT.PUSH);
        go.setText(Messages.goThere);
        go.setData(Ids.WIDGET_ID, "form.go");
        GridDataFactory.swtDefaults().applyTo(go);
        go.addListener(SWT.Selection, event -> goToProblem.run());
    }

    /** Shows a sentence with an icon; the button leads to the first problem. */
    void show(String icon, String sentence, boolean canGo) {
        var text = sentence.replace("&", "&&");
        sign.setImage(icons.named(icon));
        if (!words.getText().equals(text) || go.getVisible() != canGo) {
            words.setText(text);
            go.setVisible(canGo);
            ((GridData) go.getLayoutData()).exclude = !canGo;
            line.getParent().layout(true, true);
        }
    }
}
