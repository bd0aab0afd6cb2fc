// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.JobRecord;
import org.benchlore.plan.adding.Proposal;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** The fields of a customer's sheet, in a column that scrolls. Every change is told. */
final class SheetForm {

    private static final int LINES = 3;

    private final SheetBasis basis;
    private final Composite column;
    private final Text advice;
    private final Text found;
    private final Combo photo;
    private final FileField photoFile;
    private final Table declined;
    private final Text validUntil;
    private final FileField first;

    SheetForm(Composite parent, SheetBasis basis, Runnable changed) {
        this.basis = basis;
        var scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        column = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(8, 6).spacing(4, 3).applyTo(column);
        advice = text("sheet.advice", Messages.sheetAdvice, basis.advice(), true);
        found = text("sheet.found", Messages.sheetFound, basis.job().map(JobRecord::getFinding).orElse(""), true);
        photo = photos();
        photoFile = new FileField(column, "sheet.photoFile", Messages.sheetPhotoFile, SWT.OPEN, "*.jpg;*.jpeg;*.png;*.svg");
        declined = declined();
        validUntil = text("sheet.validUntil", Messages.sheetValid, "", false);
        validUntil.setMessage(Messages.sheetValidHint);
        first = new FileField(column, "sheet.first", Messages.sheetFirst, SWT.OPEN, "*.html;*.txt");
        scroll.setContent(column);
        scroll.setMinSize(column.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        List.of(advice, found, photoFile.control(), validUntil, first.control())
                .forEach(field -> field.addListener(SWT.Modify, event -> changed.run()));
        photo.addListener(SWT.Selection, event -> changed.run());
        declined.addListener(SWT.Selection, event -> changed.run());
    }

    private Text text(String id, String words, String value, boolean isLong) {
        new Label(column, SWT.NONE).setText(words);
        var field = new Text(column, isLong ? SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.BORDER);
        field.setData(Ids.WIDGET_ID, id);
        field.setText(Optional.ofNullable(value).orElse(""));
        Keys.name(field, words.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(160, isLong ? field.getLineHeight() * LINES : SWT.DEFAULT)
                .applyTo(field);
        if (isLong) {
            // Tab leads on: nobody needs one in a sentence.
            field.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                    || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        }
        return field;
    }

    /** The job's first picture is taken, as its first is the one that shows what was found. */
    private Combo photos() {
        new Label(column, SWT.NONE).setText(Messages.sheetPhoto);
        var combo = new Combo(column, SWT.READ_ONLY);
        combo.setData(Ids.WIDGET_ID, "sheet.photo");
        Keys.name(combo, Messages.sheetPhoto.replace("&", ""));
        combo.add(basis.photos().isEmpty() ? Messages.noPhotos : Messages.noPhoto);
        basis.photos().forEach(one -> combo.add(one.picture().caption()));
        combo.select(basis.photos().isEmpty() ? 0 : 1);
        GridDataFactory.fillDefaults().grab(true, false).hint(160, SWT.DEFAULT).applyTo(combo);
        return combo;
    }

    private Table declined() {
        new Label(column, SWT.NONE).setText(Messages.sheetDeclined);
        var table = new Table(column, SWT.BORDER | SWT.CHECK | SWT.FULL_SELECTION);
        table.setData(Ids.WIDGET_ID, "sheet.declined");
        Keys.name(table, Messages.sheetDeclined.replace("&", ""));
        basis.adding().proposals().forEach(one -> new TableItem(table, SWT.NONE).setText(one.title()));
        GridDataFactory.fillDefaults().grab(true, false).hint(160, table.getItemHeight() * 4).applyTo(table);
        return table;
    }

    SheetInput input() {
        return new SheetInput(photo.getSelectionIndex() - 1, photoFile.text(), found.getText(), advice.getText(), ids(),
                validUntil.getText(), first.text());
    }

    private List<String> ids() {
        var ids = new ArrayList<String>();
        var proposals = basis.adding().proposals().stream().map(Proposal::id).toList();
        Arrays.stream(declined.getItems()).filter(TableItem::getChecked).forEach(it -> ids.add(proposals.get(declined.indexOf(it))));
        return List.copyOf(ids);
    }

    void focus() {
        advice.setFocus();
    }
}
