// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.benchlore.model.Address;
import org.benchlore.model.Person;
import org.benchlore.model.Shop;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks why a problem may stay and who decides that. Without a reason there is no going on. */
final class SilenceDialog extends PlainDialog {

    private static final int WIDTH = 460;
    private static final int HEIGHT = 70;

    private final ProblemRow row;
    private final List<Person> people;
    private final String shop;
    private final BiConsumer<String, Optional<Address>> answered;
    private Text reason;
    private Combo by;

    SilenceDialog(Shell shell, ProblemRow row, Shop shop, String path, BiConsumer<String, Optional<Address>> answered) {
        super(shell, Messages.silenceTitle);
        this.row = row;
        this.people = shop.getPeople();
        this.shop = path;
        this.answered = answered;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        label(area, row.element() + "\n" + row.sentence());
        label(area, Messages.silenceQuestion);
        reason = new Text(area, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        reason.setData(Ids.WIDGET_ID, "problems.reason");
        Keys.name(reason, Messages.silenceQuestion);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(reason);
        reason.addListener(SWT.Modify, event -> enable());
        reason.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        label(area, Messages.silenceBy);
        by = new Combo(area, SWT.READ_ONLY);
        by.add(Messages.nobodyNamed);
        people.forEach(person -> by.add(person.getTitle() == null ? person.getId() : person.getTitle()));
        by.select(0);
        Keys.name(by, Messages.silenceBy);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(by);
        return area;
    }

    private static void label(Composite area, String words) {
        var label = new Label(area, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(label);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.silenceButton, true)
                .setData(Ids.WIDGET_ID, "problems.silence");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        enable();
    }

    private void enable() {
        getButton(IDialogConstants.OK_ID).setEnabled(!reason.getText().isBlank());
    }

    @Override
    protected void okPressed() {
        var why = reason.getText().strip();
        int index = by.getSelectionIndex() - 1;
        var person = index < 0 ? Optional.<Address>empty() : Optional.of(new Address(shop, people.get(index).getId()));
        super.okPressed();
        answered.accept(why, person);
    }
}
