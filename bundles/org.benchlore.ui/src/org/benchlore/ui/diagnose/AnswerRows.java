// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.benchlore.diagnose.Near;
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

/**
 * The next checks with what each may show as buttons or, where nothing is known, what is written that comes nearest; the first
 * nine are reached by Alt and their number.
 */
final class AnswerRows {

    private static final int MOST_CHECKS = 4;
    private static final int MOST_KEYS = 9;
    private static final int WIDTH = 280;

    private final Composite area;
    private final BiConsumer<String, String> answered;
    private final Consumer<Near> meant;
    private final Consumer<Address> opener;
    private int number;

    AnswerRows(Composite parent, BiConsumer<String, String> answered, Consumer<Near> meant, Consumer<Address> opener) {
        this.answered = answered;
        this.meant = meant;
        this.opener = opener;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 3).applyTo(area);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).indent(0, 6).exclude(true).applyTo(area);
    }

    /** Shows checks in place of those before, or what may be meant where there are none. */
    void show(List<NextCheck> checks, List<Near> nearest) {
        for (var child : area.getChildren()) {
            child.dispose();
        }
        number = 0;
        area.setEnabled(true);
        if (!checks.isEmpty()) {
            label(Messages.answersTitle);
            checks.stream().limit(MOST_CHECKS).forEach(this::row);
        } else if (!nearest.isEmpty()) {
            label(Messages.meantTitle);
            nearest.forEach(this::meaning);
        }
        area.setVisible(number > 0);
        ((GridData) area.getLayoutData()).exclude = number == 0;
    }

    private void meaning(Near near) {
        button(near.words(), NLS.bind(Messages.meant, near.finding().label(), near.words()), () -> meant.accept(near));
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
        check.results().forEach(result -> button(result.answer(), check.text() + ": " + result.answer(),
                () -> answered.accept(check.id(), result.id())));
    }

    private void label(String words) {
        var label = new Label(area, SWT.WRAP);
        label.setText(escape(words));
        fill(label, 0);
    }

    private void button(String words, String name, Runnable action) {
        number++;
        var button = new Button(area, SWT.PUSH | SWT.WRAP | SWT.LEFT);
        button.setText(number <= MOST_KEYS ? "&" + number + "  " + escape(words) : escape(words));
        button.setData(Ids.WIDGET_ID, "diagnose.answer." + number);
        Keys.name(button, name);
        button.addListener(SWT.Selection, event -> action.run());
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
