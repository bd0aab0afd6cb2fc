// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Status;
import org.benchlore.search.Titles;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.plan.PickField;
import org.benchlore.workshop.OpenLibrary;
import org.benchlore.workshop.ReviewDesk.Look;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks why a procedure is withdrawn and what is followed instead, and names the packs that still carry it. */
final class WithdrawDialog extends PlainDialog {

    private static final int MOST = 40;

    private final OpenLibrary open;
    private final Row row;
    private final BiConsumer<String, Optional<Address>> answered;
    private Optional<Row> successor = Optional.empty();
    private Text reason;
    private PickField pick;
    private Label instead;

    WithdrawDialog(Shell shell, OpenLibrary open, Row row, BiConsumer<String, Optional<Address>> answered) {
        super(shell, Messages.withdrawTitle);
        this.open = open;
        this.row = row;
        this.answered = answered;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var look = open.reviews().look(row.path());
        var words = new LookWords(row.title());
        Lines.label(area, "withdraw.head", look.map(words::standing).orElse(row.title()));
        reason = Lines.text(area, "withdraw.reason", Messages.whyWithdrawn, SWT.NONE);
        reason.addListener(SWT.Modify, event -> judge());
        pick = new PickField(area, "withdraw.successor", new PickField.Names(Messages.successor, Messages.successorHint),
                true, this::find, () -> relayout(area), this::choose);
        area.addListener(SWT.Dispose, event -> pick.dispose());
        instead = Lines.label(area, "withdraw.instead", Messages.noSuccessor);
        Lines.text(area, "withdraw.packs", Messages.packs).setText(look.map(words::packs).orElse(""));
        look.map(Look::procedure).map(procedure -> procedure.getWithdrawnReason()).ifPresent(reason::setText);
        reason.setFocus();
        return area;
    }

    private void relayout(Composite area) {
        area.layout(true, true);
        var size = area.getShell().computeSize(area.getShell().getSize().x, SWT.DEFAULT);
        if (size.y > area.getShell().getSize().y) {
            area.getShell().setSize(size);
        }
    }

    /** What can be followed instead: other procedures that are not withdrawn. */
    private List<Row> find(String typed) {
        return Titles.find(open.library().catalogue(), typed, Integer.MAX_VALUE).stream()
                .filter(one -> one.kind() == Kind.PROCEDURE && !one.path().equals(row.path())
                        && !one.status().equals(Status.WITHDRAWN.getLiteral()))
                .limit(MOST).toList();
    }

    private void choose(Row chosen) {
        successor = Optional.of(chosen);
        instead.setText(NLS.bind(Messages.followedInstead, chosen.title()).replace("&", "&&"));
        instead.requestLayout();
    }

    private void judge() {
        var ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(!reason.getText().isBlank());
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.withdraw, true).setData(Ids.WIDGET_ID, "withdraw.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        judge();
    }

    @Override
    protected void okPressed() {
        var why = reason.getText().strip();
        close();
        answered.accept(why, successor.map(Row::address));
    }
}
