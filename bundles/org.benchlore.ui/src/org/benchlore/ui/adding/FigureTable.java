// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.Optional;

import org.benchlore.page.Labels;
import org.benchlore.plan.adding.Assumptions;
import org.benchlore.plan.adding.Figure;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Every figure of one proposal: Enter or typing changes it, Delete puts the shop's own back. Changed ones are marked. */
final class FigureTable {

    private static final int VALUE = 1;
    private static final int COLUMNS = 2;
    private static final int[] WIDTHS = {250, 80, 230};

    private final Composite area;
    private final Table table;
    private final Label said;
    private final Button reset;
    private final Button resetAll;
    private final Follower follower;
    private Optional<String> proposal = Optional.empty();
    private Assumptions shown;

    FigureTable(Composite parent, Follower follower) {
        this.follower = follower;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(4, 2).spacing(4, 2).applyTo(area);
        table = table(area);
        said = new Label(area, SWT.WRAP);
        said.setText(Messages.figureHint);
        said.setData(Ids.WIDGET_ID, "adding.figureSaid");
        GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).hint(100, SWT.DEFAULT).applyTo(said);
        reset = button(Messages.reset, "adding.reset", this::reset);
        resetAll = button(Messages.resetAll, "adding.resetAll", () -> proposal.ifPresent(follower::resetAll));
        new FigureEditor(table, VALUE, this::entered);
        Keys.on(table, SWT.DEL, this::reset);
        table.addListener(SWT.Selection, event -> {
            enable();
            say(words());
        });
    }

    /** The selected line in full, since columns are narrow. */
    private String words() {
        int at = table.getSelectionIndex();
        return at < 0 ? Messages.figureHint : NLS.bind(Messages.figureWhole, new Object[] {Labels.capital(Figure.values()[at].words()),
            shown.find(Figure.values()[at]).map(Assumptions.Assumed::from).orElse(Messages.notKnown), Messages.figureHint});
    }

    private static Table table(Composite area) {
        var table = new Table(area, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, "adding.figures");
        table.setHeaderVisible(true);
        Keys.name(table, Messages.figures);
        var titles = new String[] {Messages.figure, Messages.value, Messages.from};
        for (int i = 0; i < titles.length; i++) {
            var column = new TableColumn(table, SWT.LEFT);
            column.setText(titles[i]);
            column.setWidth(WIDTHS[i]);
        }
        GridDataFactory.fillDefaults().grab(true, true).span(COLUMNS, 1).hint(100, 60).applyTo(table);
        return table;
    }

    private Button button(String words, String id, Runnable action) {
        var button = new Button(area, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** Where it is low and wide, buttons stand beside what is said. */
    void beLow(boolean isLow) {
        int columns = isLow ? COLUMNS + 1 : COLUMNS;
        ((GridLayout) area.getLayout()).numColumns = columns;
        ((GridData) table.getLayoutData()).horizontalSpan = columns;
        ((GridData) said.getLayoutData()).horizontalSpan = isLow ? 1 : COLUMNS;
        area.layout(true, true);
    }

    Composite control() {
        return area;
    }

    /** Shows the figures of a proposal; the selected line stays. */
    void show(Optional<String> next, Assumptions assumptions) {
        if (!next.equals(proposal)) {
            say(Messages.figureHint);
        }
        proposal = next;
        shown = assumptions;
        int at = table.getSelectionIndex();
        table.setItemCount(Figure.values().length);
        for (var figure : Figure.values()) {
            fill(table.getItem(figure.ordinal()), figure, assumptions.find(figure));
        }
        table.setSelection(Math.max(0, at));
        enable();
    }

    private void fill(TableItem item, Figure figure, Optional<Assumptions.Assumed> assumed) {
        boolean isChanged = assumed.filter(Assumptions.Assumed::byHand).isPresent();
        item.setText(new String[] {(isChanged ? "* " : "") + Labels.capital(figure.words()), assumed.map(it ->
                figure.form() == Figure.Form.MONEY ? Ticked.money(it.value()) : it.value().toPlainString()).orElse(""),
            assumed.map(Assumptions.Assumed::from).orElse(Messages.notKnown)});
        item.setFont(isChanged ? JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT) : null);
    }

    private void entered(int row, String text) {
        var figure = Figure.values()[row];
        if (text.isBlank()) {
            proposal.ifPresent(id -> follower.reset(id, figure));
            return;
        }
        var read = FigureText.read(figure, shown, text);
        say(read.problem().orElse(Messages.figureHint));
        read.value().ifPresent(value -> proposal.ifPresent(id -> follower.figure(id, figure, value)));
    }

    private void reset() {
        if (table.getSelectionIndex() >= 0) {
            say(Messages.figureHint);
            proposal.ifPresent(id -> follower.reset(id, Figure.values()[table.getSelectionIndex()]));
        }
    }

    private void enable() {
        int at = table.getSelectionIndex();
        reset.setEnabled(shown != null && at >= 0 && shown.find(Figure.values()[at]).filter(Assumptions.Assumed::byHand).isPresent());
        resetAll.setEnabled(shown != null && shown.figures().values().stream().anyMatch(Assumptions.Assumed::byHand));
    }

    private void say(String sentence) {
        said.setText(sentence.replace("&", "&&"));
        area.layout(true, true);
    }
}
