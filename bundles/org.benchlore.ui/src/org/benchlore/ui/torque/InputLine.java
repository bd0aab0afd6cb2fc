// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** An input on the screen: its name, its field, and under it what is wrong with what stands there. */
final class InputLine {

    private static final int WIDTH = 190;

    private final Input input;
    private final Control field;
    private final Label problem;

    InputLine(Composite parent, String id, Input input, Runnable changed) {
        this.input = input;
        new Label(parent, SWT.NONE).setText(input.label());
        field = input.choices().isEmpty() ? text(parent, changed) : combo(parent, changed);
        field.setData(Ids.WIDGET_ID, id);
        Keys.name(field, input.label().replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(field);
        problem = new Label(parent, SWT.WRAP);
        problem.setData(Ids.WIDGET_ID, id + ".problem");
        problem.setForeground(JFaceColors.getErrorText(parent.getDisplay()));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDTH, SWT.DEFAULT).exclude(true)
                .applyTo(problem);
        problem.setVisible(false);
    }

    private Control text(Composite parent, Runnable changed) {
        var text = new Text(parent, SWT.BORDER);
        text.setMessage(input.hint());
        text.addModifyListener(event -> changed.run());
        return text;
    }

    private Control combo(Composite parent, Runnable changed) {
        var combo = new Combo(parent, input.fixed() ? SWT.READ_ONLY : SWT.NONE);
        combo.setItems(input.choices().toArray(String[]::new));
        if (input.fixed()) {
            combo.select(0);
        }
        combo.addModifyListener(event -> changed.run());
        return combo;
    }

    Input input() {
        return input;
    }

    String get() {
        return field instanceof Text text ? text.getText() : ((Combo) field).getText();
    }

    void set(String words) {
        if (field instanceof Text text) {
            text.setText(words);
        } else {
            ((Combo) field).setText(words);
        }
    }

    void focus() {
        field.setFocus();
    }

    /** Says what is wrong; nothing if the sentence is empty. Returns whether that takes more or less room than before. */
    boolean say(String sentence) {
        boolean changed = !problem.getText().replace("&&", "&").equals(sentence);
        problem.setText(sentence.replace("&", "&&"));
        problem.setVisible(!sentence.isEmpty());
        ((GridData) problem.getLayoutData()).exclude = sentence.isEmpty();
        return changed;
    }
}
