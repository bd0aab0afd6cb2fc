// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.benchlore.diagnose.NextCheck;
import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** The next checks with what each may show as buttons; the first nine are reached by Alt and their number. */
final class AnswerRows {

    private static final int MOST_CHECKS = 4;
    private static final int MOST_KEYS = 9;
    private static final int WIDTH = 280;

    private final Composite area;
    private final BiConsumer<String, String> answered;
    private final Consumer<Address> opener;
    private int number;

    AnswerRows(Composite parent, BiConsumer<String, String> answered, Consumer<Address> opener) {
        this.answered = answered;
        this.opener = opener;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 3).applyTo(area);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).indent(0, 6).exclude(true).applyTo(area);
    }

    /** Shows checks in place of those before. */
    void show(List<NextCheck> checks) {
        for (var child : area.getChildren()) {
            child.dispose();
        }
        number = 0;
        area.setEnabled(true);
        if (!checks.isEmpty()) {
            label(Messages.answersTitle);
        }
        checks.stream().limit(MOST_CHECKS).forEach(this::row);
        area.setVisible(!checks.isEmpty());
        ((GridData) area.getLayoutData()).exclude = checks.isEmpty();
    }

    /** Takes no answer until the next checks are shown: they would be answers to what is no longer asked. */
    void rest() {
        area.setEnabled(false);
    }

    private void row(NextCheck check) {
        var title = new Link(area, SWT.NONE);
        var name = "<a>" + escape(check.procedure().title()) + "</a>";
        title.setText(check.critical() ? NLS.bind(Messages.checkFirst, name) : name);
        title.setData(Ids.WIDGET_ID, "diagnose.check." + check.id());
        title.addListener(SWT.Selection, event -> opener.accept(check.address()));
        fill(title, 6);
        if (!check.text().equals(check.procedure().title())) {
            label(check.text());
        }
        check.results().forEach(result -> button(check, result));
    }

    private void label(String words) {
        var label = new Label(area, SWT.WRAP);
        label.setText(escape(words));
        fill(label, 0);
    }

    private void button(NextCheck check, NextCheck.Result result) {
        number++;
        var button = new Button(area, SWT.PUSH | SWT.WRAP | SWT.LEFT);
        button.setText(number <= MOST_KEYS ? "&" + number + "  " + escape(result.answer()) : escape(result.answer()));
        button.setData(Ids.WIDGET_ID, "diagnose.answer." + number);
        Keys.name(button, check.text() + ": " + result.answer());
        button.addListener(SWT.Selection, event -> answered.accept(check.id(), result.id()));
        fill(button, 0);
    }

    private static void fill(Control control, int above) {
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).indent(0, above).applyTo(control);
    }

    private static String escape(String words) {
        return words.replace("&", "&&");
    }

    /** Puts the cursor on the first result; tells whether there is one. */
    boolean focus() {
        for (var child : area.getChildren()) {
            if (child instanceof Button button) {
                return button.setFocus();
            }
        }
        return false;
    }
}
