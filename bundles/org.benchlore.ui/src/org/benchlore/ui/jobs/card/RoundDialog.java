// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.model.Address;
import org.benchlore.model.RoundKind;
import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.edit.form.ComboKeys;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks what the next round is and what of the work goes on in it. */
final class RoundDialog extends PlainDialog {

    /** What was answered. */
    interface Answered {
        void round(RoundKind kind, LocalDate day, List<Address> planned, String text);
    }

    private static final int WIDTH = 440;
    private static final List<RoundKind> KINDS = List.of(RoundKind.STRIP, RoundKind.TEACH_IN_FAILED, RoundKind.STRIP_AGAIN,
            RoundKind.VERIFY, RoundKind.HAND_BACK);

    private final RoundKind proposed;
    private final Map<Address, String> work;
    private final Answered answered;
    private final Map<Address, Button> ticks = new LinkedHashMap<>();
    private Combo kind;
    private Text text;

    RoundDialog(Shell shell, RoundKind proposed, Map<Address, String> work, Answered answered) {
        super(shell, Messages.roundTitle);
        this.proposed = proposed;
        this.work = work;
        this.answered = answered;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        label(area, Messages.roundKind);
        kind = new Combo(area, SWT.READ_ONLY);
        kind.setData(Ids.WIDGET_ID, "job.round.kind");
        Keys.name(kind, Messages.roundKind);
        KINDS.forEach(one -> kind.add(Labels.capital(Labels.of(one))));
        ComboKeys.install(kind);
        kind.select(KINDS.indexOf(proposed));
        kind.addListener(SWT.Selection, event -> tickBy(KINDS.get(kind.getSelectionIndex())));
        label(area, Messages.roundText);
        text = new Text(area, SWT.BORDER);
        text.setData(Ids.WIDGET_ID, "job.round.text");
        Keys.name(text, Messages.roundText);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
        if (!work.isEmpty()) {
            label(area, Messages.roundWork);
            work.forEach((address, title) -> tick(area, address, title));
        }
        label(area, Messages.roundMore);
        tickBy(proposed);
        kind.setFocus();
        return area;
    }

    private static void label(Composite area, String words) {
        var label = new Label(area, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(label);
    }

    private void tick(Composite area, Address address, String title) {
        var tick = new Button(area, SWT.CHECK);
        tick.setText(title.replace("&", "&&"));
        tick.setData(Ids.WIDGET_ID, "job.round.work." + address.id());
        ticks.put(address, tick);
    }

    /** Work goes on where something is stripped; the other rounds say what happened. */
    private void tickBy(RoundKind chosen) {
        boolean works = chosen == RoundKind.STRIP || chosen == RoundKind.STRIP_AGAIN;
        ticks.values().forEach(tick -> tick.setSelection(works));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.roundBegin, true).setData(Ids.WIDGET_ID, "job.round.begin");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void okPressed() {
        var chosen = KINDS.get(kind.getSelectionIndex());
        var words = text.getText();
        var planned = new ArrayList<Address>();
        ticks.forEach((address, tick) -> {
            if (tick.getSelection()) {
                planned.add(address);
            }
        });
        super.okPressed();
        answered.round(chosen, LocalDate.now(), planned, words);
    }
}
