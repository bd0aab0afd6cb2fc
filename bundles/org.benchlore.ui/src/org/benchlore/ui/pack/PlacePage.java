// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

import org.benchlore.pack.PackException;
import org.benchlore.pack.PackRequest;
import org.benchlore.pack.Packing.Form;
import org.benchlore.pack.Selector;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What would go in and what would not, the forms of the pack, and where it is written. */
final class PlacePage extends WizardPage {

    private static final String ZIP = ".zip";

    private final OpenLibrary library;
    private final Supplier<PackRequest> request;
    private Text preview;
    private Button html;
    private Button learner;
    private Button zip;
    private Text place;
    private LatestJob<PackRequest, Answer> looking;
    private boolean isPossible;

    /** What would go in, or why nothing can. */
    private record Answer(String words, boolean isPossible) {
    }

    PlacePage(OpenLibrary library, Supplier<PackRequest> request) {
        super("place", Messages.placeTitle, null);
        setDescription(Messages.placeDescription);
        this.library = library;
        this.request = request;
    }

    @Override
    public void createControl(Composite parent) {
        var area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
        preview = new Text(area, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        preview.setData(Ids.WIDGET_ID, "pack.preview");
        Keys.name(preview, Messages.placeTitle);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(preview);
        html = form(area, "pack.html", Messages.formPages);
        html.setSelection(true);
        learner = form(area, "pack.learner", Messages.formLearner);
        zip = form(area, "pack.library", Messages.formLibrary);
        createPlace(area);
        looking = new LatestJob<>(Messages.looking, this::look, new WindowThread(area), (asked, answer) -> show(answer));
        setControl(area);
        setPageComplete(false);
    }

    private Button form(Composite area, String id, String words) {
        var button = ChoicePage.tick(area, id, words);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(button);
        button.addListener(SWT.Selection, event -> formChanged());
        return button;
    }

    private void createPlace(Composite area) {
        var label = new Label(area, SWT.NONE);
        label.setText(Messages.where);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(label);
        place = new Text(area, SWT.BORDER);
        place.setData(Ids.WIDGET_ID, "pack.place");
        Keys.name(place, Messages.where);
        place.setText(Path.of(System.getProperty("user.home"), "pack-" + LocalDate.now()).toString());
        place.addListener(SWT.Modify, event -> check());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(place);
        var browse = new Button(area, SWT.PUSH);
        browse.setText(Messages.browse);
        browse.addListener(SWT.Selection, event -> browse());
    }

    private void browse() {
        var dialog = new DirectoryDialog(getShell());
        dialog.setMessage(Messages.browseWhere);
        var folder = dialog.open();
        if (folder != null) {
            place.setText(Path.of(folder).resolve(place().getFileName()).toString());
        }
    }

    /** A library pack alone is a zip file, pages are a folder: the place is named so. */
    private void formChanged() {
        boolean isZip = zip.getSelection() && !html.getSelection();
        var typed = place.getText();
        if (isZip && !typed.endsWith(ZIP)) {
            place.setText(typed + ZIP);
        } else if (!isZip && typed.endsWith(ZIP)) {
            place.setText(typed.substring(0, typed.length() - ZIP.length()));
        }
        learner.setEnabled(html.getSelection());
        check();
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            isPossible = false;
            preview.setText(Messages.looking);
            check();
            looking.ask(request.get(), 0);
        }
    }

    private Answer look(PackRequest asked) {
        try {
            var selection = Selector.of(library.library(), asked);
            return new Answer(NLS.bind(Messages.preview, new Object[] {selection.title(), PackWords.contents(selection),
                lines(PackWords.leftOut(selection.leftOut()))}), true);
        } catch (PackException e) {
            return new Answer(e.getMessage(), false);
        }
    }

    private static String lines(List<String> all) {
        return all.isEmpty() ? Messages.nothingLeftOut : String.join("\n", all);
    }

    private void show(Answer answer) {
        isPossible = answer.isPossible();
        preview.setText(answer.words());
        check();
    }

    private void check() {
        setErrorMessage(!html.getSelection() && !zip.getSelection() ? Messages.noForm : isPlace() ? null : Messages.noPlace);
        setPageComplete(isPossible && getErrorMessage() == null);
    }

    private boolean isPlace() {
        try {
            return !place.getText().isBlank() && Path.of(place.getText().strip()).getFileName() != null;
        } catch (InvalidPathException e) {
            return false;
        }
    }

    Path place() {
        return Path.of(place.getText().strip());
    }

    Set<Form> forms() {
        var forms = EnumSet.noneOf(Form.class);
        if (html.getSelection()) {
            forms.add(Form.HTML);
        }
        if (zip.getSelection()) {
            forms.add(Form.LIBRARY);
        }
        return forms;
    }

    boolean withLearner() {
        return html.getSelection() && learner.getSelection();
    }
}
