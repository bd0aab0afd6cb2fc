// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.util.List;
import java.util.function.Consumer;

import org.benchlore.edit.desk.Chips.Chip;
import org.benchlore.edit.desk.Proposal;
import org.benchlore.ui.Ids;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** What a note holds beside its text, and what its text proposes: ticked or not, each with its key. */
final class ChipRow {

    private static final int MOST_KEYS = 9;
    private static final int MOST_LETTERS = 46;

    private final Composite row;
    private final Consumer<Proposal> toggle;
    private List<Chip> shown = List.of();

    ChipRow(Composite parent, Consumer<Proposal> toggle) {
        this.toggle = toggle;
        row = new Composite(parent, SWT.NONE);
        row.setData(Ids.WIDGET_ID, "note.chips");
        var layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = 10;
        row.setLayout(layout);
    }

    Composite control() {
        return row;
    }

    /** Shows chips and tells whether anything is different now. */
    boolean show(List<Chip> chips) {
        if (chips.equals(shown)) {
            return false;
        }
        int focused = focused();
        shown = chips;
        for (var child : row.getChildren()) {
            child.dispose();
        }
        chips.forEach(this::add);
        if (focused > 0 && focused <= row.getChildren().length) {
            row.getChildren()[focused - 1].setFocus();
        }
        row.layout();
        return true;
    }

    private int focused() {
        for (int i = 0; i < row.getChildren().length; i++) {
            if (row.getChildren()[i].isFocusControl()) {
                return i + 1;
            }
        }
        return 0;
    }

    private void add(Chip chip) {
        var button = new Button(row, SWT.CHECK);
        var words = words(chip.value());
        var keyed = chip.number() <= MOST_KEYS ? NLS.bind(Messages.chip, chip.number(), shortened(words)) : shortened(words);
        button.setText(keyed.replace("&", "&&"));
        button.setToolTipText(words);
        button.setSelection(chip.isIn());
        button.setData(Ids.WIDGET_ID, "note.chip." + chip.number());
        button.addListener(SWT.Selection, event -> toggle.accept(chip.value()));
    }

    private static String shortened(String words) {
        return words.length() <= MOST_LETTERS ? words : words.substring(0, MOST_LETTERS - 1) + "…";
    }

    private static String words(Proposal value) {
        return NLS.bind(switch (value.what()) {
            case MACHINE -> Messages.machine;
            case UNIT -> Messages.unit;
            case JOB -> Messages.job;
            case PROCEDURE -> Messages.during;
            case CODE, CODE_AS_WRITTEN -> Messages.code;
            case COMPONENT -> Messages.component;
            case CAUSE -> Messages.cause;
            case SYMPTOM -> Messages.symptom;
        }, value.text());
    }
}
