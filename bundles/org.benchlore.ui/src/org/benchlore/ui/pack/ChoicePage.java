// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.pack.Extra;
import org.benchlore.pack.PackRequest;
import org.benchlore.page.Labels;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** What goes into a pack: machines with all their procedures, procedures one by one, or nothing ticked for everything. */
final class ChoicePage extends WizardPage {

    private static final int TITLE_WIDTH = 380;
    private static final int MACHINE_WIDTH = 220;
    private static final int KIND_WIDTH = 190;

    private final Catalogue catalogue;
    private final List<Row> rows;
    private final Set<String> ticked = new LinkedHashSet<>();
    private final Map<Extra, Button> extras = new EnumMap<>(Extra.class);
    private Text title;
    private Text filter;
    private Table table;
    private Button drafts;
    private Button withdrawn;

    ChoicePage(OpenLibrary library) {
        super("choice", Messages.choiceTitle, null);
        setDescription(Messages.choiceDescription);
        this.catalogue = library.library().catalogue();
        this.rows = Stream.of(Kind.MACHINE, Kind.PROCEDURE)
                .flatMap(kind -> catalogue.rows(kind).sorted(Comparator.comparing(Row::title).thenComparing(this::machine))).toList();
    }

    @Override
    public void createControl(Composite parent) {
        var area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(area);
        title = text(area, "pack.title", Messages.packName);
        filter = text(area, "pack.filter", Messages.filter);
        filter.addListener(SWT.Modify, event -> fill());
        table = new Table(area, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, "pack.rows");
        table.setHeaderVisible(true);
        Keys.name(table, Messages.choiceTitle);
        column(Messages.columnTitle, TITLE_WIDTH);
        column(Messages.columnMachine, MACHINE_WIDTH);
        column(Messages.columnKind, KIND_WIDTH);
        table.addListener(SWT.Selection, event -> ticked((TableItem) event.item));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        drafts = tick(area, "pack.drafts", Messages.drafts);
        withdrawn = tick(area, "pack.withdrawn", Messages.withdrawn);
        createExtras(area);
        fill();
        setControl(area);
    }

    private static Text text(Composite area, String id, String name) {
        new Label(area, SWT.NONE).setText(name);
        var text = new Text(area, SWT.BORDER | SWT.SINGLE);
        text.setData(Ids.WIDGET_ID, id);
        Keys.name(text, name);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        return text;
    }

    private void column(String name, int width) {
        var column = new TableColumn(table, SWT.NONE);
        column.setText(name);
        column.setWidth(width);
    }

    static Button tick(Composite area, String id, String words) {
        var button = new Button(area, SWT.CHECK);
        button.setText(words.replace("&", "&&"));
        button.setData(Ids.WIDGET_ID, id);
        return button;
    }

    private void createExtras(Composite area) {
        var group = new Group(area, SWT.NONE);
        group.setText(Messages.extras);
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        for (var extra : Extra.values()) {
            extras.put(extra, tick(group, "pack.extra." + extra.word(), Labels.capital(extra.words())));
        }
    }

    private void fill() {
        var words = filter.getText().toLowerCase(Locale.ROOT).strip().split("\\s+");
        table.removeAll();
        for (var row : rows) {
            var machine = machine(row);
            var all = (row.title() + " " + machine + " " + row.id()).toLowerCase(Locale.ROOT);
            if (Stream.of(words).allMatch(all::contains)) {
                var item = new TableItem(table, SWT.NONE);
                item.setText(new String[] {row.title(), machine, kind(row)});
                item.setData(row);
                item.setChecked(ticked.contains(row.id()));
            }
        }
    }

    /** The machines a procedure is for: two machines may both have their valves adjusted. */
    private String machine(Row row) {
        if (row.kind() == Kind.MACHINE) {
            return "";
        }
        return row.machines().stream().map(address -> catalogue.at(address).map(Row::title).orElse(address.id()))
                .collect(Collectors.joining(", "));
    }

    private static String kind(Row row) {
        return row.kind() == Kind.MACHINE ? Messages.allOfMachine : Labels.of(row.kind()) + " · " + row.status().toLowerCase(Locale.ROOT);
    }

    private void ticked(TableItem item) {
        var id = ((Row) item.getData()).id();
        if (item.getChecked()) {
            ticked.add(id);
        } else {
            ticked.remove(id);
        }
    }

    /** What is wanted, as it is ticked now. */
    PackRequest request() {
        var chosen = EnumSet.noneOf(Extra.class);
        extras.forEach((extra, button) -> {
            if (button.getSelection()) {
                chosen.add(extra);
            }
        });
        return new PackRequest(title.getText().strip(), ids(Kind.PROCEDURE), ids(Kind.MACHINE), List.of(), Set.of(), drafts.getSelection(),
                withdrawn.getSelection(), chosen);
    }

    private List<String> ids(Kind kind) {
        var found = new ArrayList<String>();
        rows.stream().filter(row -> row.kind() == kind && ticked.contains(row.id())).forEach(row -> found.add(row.id()));
        return found;
    }
}
