// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.access;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.benchlore.edit.Sessions;
import org.benchlore.edit.access.Hours;
import org.benchlore.edit.access.SplitHours;
import org.benchlore.edit.access.SplitPlaces.Place;
import org.benchlore.model.Access;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.store.LibraryException;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.edit.form.ComboKeys;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Asks what must come off first, how long strip and refit take, and how long the work itself. */
final class SplitDialog extends PlainDialog {

    /** Takes what was answered. */
    interface Taker {
        void take(Place place, String name, Hours usual, Hours bad) throws LibraryException;
    }

    private static final int WIDTH = 520;
    private static final int ROWS = 4;

    private final Sessions sessions;
    private final List<Place> found;
    private final boolean isOfProcedure;
    private final Taker taker;
    private Combo place;
    private Label whole;
    private Text name;
    private Table known;
    private HoursFields hours;
    private Label sentence;

    SplitDialog(Shell shell, Sessions sessions, List<Place> found, boolean isOfProcedure, Taker taker) {
        super(shell, Messages.title);
        this.sessions = sessions;
        this.found = found;
        this.isOfProcedure = isOfProcedure;
        this.taker = taker;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        createPlace(area);
        whole = line(area, "split.whole");
        createName(area);
        hours = new HoursFields(area, this::changed);
        sentence = line(area, "split.sentence");
        placeChosen();
        name.setFocus();
        return area;
    }

    private static Label line(Composite area, String id) {
        var label = new Label(area, SWT.WRAP);
        label.setData(Ids.WIDGET_ID, id);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    /** Where only one machine or procedure can be meant, nobody is asked. */
    private void createPlace(Composite area) {
        if (found.size() > 1) {
            new Label(area, SWT.NONE).setText(isOfProcedure ? Messages.machine : Messages.procedure);
        }
        place = new Combo(area, SWT.READ_ONLY);
        place.setData(Ids.WIDGET_ID, "split.place");
        Keys.name(place, isOfProcedure ? Messages.machineName : Messages.procedureName);
        found.forEach(one -> place.add(one.title()));
        ComboKeys.install(place);
        place.select(0);
        place.addListener(SWT.Selection, event -> placeChosen());
        GridDataFactory.fillDefaults().grab(true, false).exclude(found.size() == 1).applyTo(place);
        place.setVisible(found.size() > 1);
    }

    private void createName(Composite area) {
        new Label(area, SWT.NONE).setText(Messages.first);
        name = new Text(area, SWT.BORDER);
        name.setData(Ids.WIDGET_ID, "split.name");
        name.setMessage(Messages.firstExample);
        Keys.name(name, Messages.firstName);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(name);
        name.addModifyListener(event -> changed());
        known = new Table(area, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        known.setData(Ids.WIDGET_ID, "split.known");
        Keys.name(known, Messages.knownName);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, ROWS * known.getItemHeight()).applyTo(known);
        known.addListener(SWT.Selection, event -> name.setText(known.getSelection()[0].getText()));
        Keys.on(name, SWT.ARROW_DOWN, () -> known.setFocus());
    }

    private Place chosen() {
        return found.get(Math.max(0, place.getSelectionIndex()));
    }

    private Machine machine() {
        return (Machine) sessions.current(chosen().machine()).orElseThrow();
    }

    private Procedure procedure() {
        return (Procedure) sessions.current(chosen().procedure()).orElseThrow();
    }

    private void placeChosen() {
        var bad = Optional.ofNullable(procedure().getWholeJobBad());
        var usual = procedure().getWholeJobUsual();
        whole.setText(NLS.bind(bad.isPresent() ? Messages.wholeWithBad : Messages.whole, new Object[] {
            String.valueOf(procedure().getTitle()), usual, bad.orElse(usual)}).replace("&", "&&"));
        boolean isFirst = machine().getAccesses().isEmpty();
        ((GridData) known.getLayoutData()).exclude = isFirst;
        known.setVisible(!isFirst);
        known.requestLayout();
        hours.begin(procedure());
        changed();
    }

    private Optional<Access> access() {
        return SplitHours.find(machine(), name.getText());
    }

    private void changed() {
        showKnown();
        hours.show(access(), procedure());
        var problem = hours.problem();
        sentence.setText(problem.orElseGet(this::told).replace("&", "&&"));
        sentence.requestLayout();
        var ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(problem.isEmpty() && !name.getText().isBlank() && hours.complete(access(), procedure())
                    .isWhole());
        }
    }

    private String told() {
        var all = hours.complete(access(), procedure());
        return !name.getText().isBlank() && all.isWhole() ? all.against(procedure().getWholeJobUsual())
                : access().isPresent() || name.getText().isBlank() ? Messages.before
                : NLS.bind(Messages.newAccess, name.getText().strip());
    }

    /** What fits the letters; all once one of them is chosen, so that another one can be. */
    private void showKnown() {
        var letters = access().isPresent() ? "" : name.getText().strip().toLowerCase(Locale.ROOT);
        var titles = machine().getAccesses().stream().map(Access::getTitle).filter(title -> title != null
                && title.toLowerCase(Locale.ROOT).contains(letters)).toList();
        if (!titles.equals(List.of(known.getItems()).stream().map(TableItem::getText).toList())) {
            known.removeAll();
            titles.forEach(title -> new TableItem(known, SWT.NONE).setText(title));
        }
        known.setSelection(access().map(Access::getTitle).map(titles::indexOf).orElse(-1));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.ok, true).setData(Ids.WIDGET_ID, "split.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        changed();
    }

    @Override
    protected void okPressed() {
        try {
            taker.take(chosen(), name.getText(), hours.usual(), hours.bad());
            close();
        } catch (IllegalArgumentException | LibraryException e) {
            sentence.setText(e.getMessage().replace("&", "&&"));
            sentence.requestLayout();
        }
    }
}
