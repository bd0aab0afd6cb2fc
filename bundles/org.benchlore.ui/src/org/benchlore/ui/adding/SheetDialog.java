// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.store.ElementTitle;
import org.benchlore.ui.Ids;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.PageCanvas;
import org.benchlore.ui.session.SessionMemory;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;

/** The customer's sheet: its fields, beside them how it will look, below where it is saved and whether it is written down. */
final class SheetDialog extends PlainDialog {

    private static final int PAUSE = 200;
    private static final Point USUAL = new Point(1100, 760);

    private final IWorkbenchWindow window;
    private final SheetBasis basis;
    private SheetForm form;
    private PageCanvas preview;
    private FileField file;
    private Button offers;
    private Label said;
    private SheetSaver saver;
    private LatestJob<SheetInput, SheetWork.Made> job;
    private Optional<SheetWork.Made> made = Optional.empty();

    SheetDialog(IWorkbenchWindow window, SheetBasis basis) {
        super(window.getShell(), Messages.sheetTitle);
        this.window = window;
        this.basis = basis;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var sash = new SashForm(area, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).hint(100, 100).applyTo(sash);
        form = new SheetForm(sash, basis, this::ask);
        preview = new PageCanvas(sash, "sheet.preview", window.getService(SessionMemory.class).zoom(), address -> { });
        sash.setWeights(38, 62);
        file = new FileField(area, "sheet.file", Messages.sheetFile, SWT.SAVE, "*.html", "*.txt");
        file.control().setText(Path.of(System.getProperty("user.home"), "sheet-" + basis.adding().request().subject() + "-"
                + basis.adding().request().today() + ".html").toString());
        offers = new Button(area, SWT.CHECK);
        offers.setData(Ids.WIDGET_ID, "sheet.offers");
        offers.setText(basis.job().map(it -> NLS.bind(Messages.writeOffers, ElementTitle.of(it).replace("&", "&&")))
                .orElse(Messages.noJobForOffers));
        boolean canWrite = basis.job().isPresent() && basis.opened().library().isWritable();
        offers.setEnabled(canWrite);
        offers.setSelection(canWrite);
        said = new Label(area, SWT.WRAP);
        said.setData(Ids.WIDGET_ID, "sheet.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(said);
        var thread = new WindowThread(area);
        job = new LatestJob<>(Messages.makingSheet, input -> SheetWork.of(basis, input), thread, this::show);
        saver = new SheetSaver(window, basis, thread, this::say);
        area.addListener(SWT.Dispose, event -> job.forget());
        ask();
        return area;
    }

    @Override
    public int open() {
        int code = super.open();
        form.focus();
        return code;
    }

    private void ask() {
        made = Optional.empty();
        job.ask(form.input(), PAUSE);
    }

    private void show(SheetInput input, SheetWork.Made next) {
        made = Optional.of(next);
        preview.show(next.page(), next.images());
        say(next.problem().orElse(""));
    }

    private void say(String sentence) {
        said.setText(sentence.replace("&", "&&"));
        said.getParent().layout(true, true);
    }

    @Override
    protected Point getInitialSize() {
        var room = getParentShell().getSize();
        return new Point(Math.min(USUAL.x, room.x), Math.min(USUAL.y, room.y));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.save, false).setData(Ids.WIDGET_ID, "sheet.save");
        createButton(parent, IDialogConstants.OPEN_ID, Messages.saveAndOpen, true).setData(Ids.WIDGET_ID, "sheet.saveAndOpen");
        createButton(parent, IDialogConstants.CLOSE_ID, IDialogConstants.CLOSE_LABEL, false).setData(Ids.WIDGET_ID, "sheet.close");
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == IDialogConstants.CLOSE_ID) {
            close();
            return;
        }
        if (id != IDialogConstants.OK_ID && id != IDialogConstants.OPEN_ID) {
            super.buttonPressed(id);
            return;
        }
        if (made.isEmpty()) {
            say(Messages.sheetNotMade);
        } else if (made.get().problem().isPresent()) {
            say(made.get().problem().get());
        } else {
            saver.save(made.get(), new SheetSaver.Target(file.text(), file.isChosen(), id == IDialogConstants.OPEN_ID),
                    offers.getSelection() ? Optional.of(form.input().declined()) : Optional.empty());
        }
    }
}
