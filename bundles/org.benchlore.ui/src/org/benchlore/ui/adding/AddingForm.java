// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

import org.benchlore.store.Catalogue;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.plan.FormLines;
import org.benchlore.ui.plan.PlanForm;
import org.benchlore.ui.plan.Wanted;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What is done, where the machine stands, and how many years it will be kept. */
final class AddingForm {

    private static final int MOST_DIGITS = 2;

    private final PlanForm form;
    private final Text keep;
    private boolean isFilling;

    AddingForm(Composite parent, Supplier<Optional<Catalogue>> catalogue, Follower follower) {
        form = new PlanForm(parent, "adding", catalogue, follower::change);
        new Label(form.column(), SWT.NONE).setText(Messages.keep);
        keep = new Text(form.column(), SWT.BORDER);
        keep.setMessage(Messages.keepHint);
        keep.setTextLimit(MOST_DIGITS);
        keep.setData(Ids.WIDGET_ID, "adding.keep");
        Keys.name(keep, Messages.keep.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(keep);
        keep.addListener(SWT.Verify, event -> event.doit = event.text.chars().allMatch(Character::isDigit));
        keep.addListener(SWT.Modify, event -> {
            if (!isFilling) {
                follower.keep(years(keep.getText()));
            }
        });
    }

    /** Nothing, or nothing but noughts, is what the unit's page says. */
    static OptionalInt years(String text) {
        int years = text.isEmpty() ? 0 : Integer.parseInt(text);
        return years == 0 ? OptionalInt.empty() : OptionalInt.of(years);
    }

    void show(Wanted wanted, FormLines lines) {
        form.show(wanted, lines);
    }

    void keep(OptionalInt years) {
        isFilling = true;
        keep.setText(years.isPresent() ? String.valueOf(years.getAsInt()) : "");
        isFilling = false;
    }

    void clear() {
        keep(OptionalInt.empty());
        form.clear();
    }

    void focus() {
        form.focus();
    }
}
