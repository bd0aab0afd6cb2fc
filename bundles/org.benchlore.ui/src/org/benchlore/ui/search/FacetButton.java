// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import org.benchlore.search.Facet;
import org.benchlore.search.Results.Count;
import org.benchlore.store.Catalogue;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Opens the values of one facet with their counts; says which one was chosen. */
final class FacetButton {

    private static final int MOST_VALUES = 40;
    private static final String OPENS = " ▾";

    private final Facet facet;
    private final Button button;
    private final Runnable changed;
    private Optional<Catalogue> catalogue = Optional.empty();
    private List<Count> counts = List.of();
    private String chosen;
    private Menu menu;

    FacetButton(Composite parent, Facet facet, Runnable changed) {
        this.facet = facet;
        this.changed = changed;
        button = new Button(parent, SWT.PUSH);
        button.setData(Ids.WIDGET_ID, "search.filter." + facet.name().toLowerCase(Locale.ROOT));
        button.setLayoutData(new RowData());
        button.addListener(SWT.Selection, event -> openMenu());
        button.addListener(SWT.Dispose, event -> disposeMenu());
        Keys.on(button, SWT.CR, this::openMenu);
        Keys.on(button, SWT.ARROW_DOWN, this::openMenu);
        Keys.on(button, SWT.DEL, () -> choose(null));
        Keys.on(button, SWT.BS, () -> choose(null));
        label();
    }

    Button control() {
        return button;
    }

    Facet facet() {
        return facet;
    }

    Optional<String> chosen() {
        return Optional.ofNullable(chosen);
    }

    boolean isOffered() {
        return chosen != null || !counts.isEmpty();
    }

    void show(List<Count> next, Catalogue words) {
        catalogue = Optional.of(words);
        counts = facet == Facet.YEAR ? next.stream().sorted(Comparator.comparing(Count::value).reversed()).toList() : next;
        label();
    }

    void clear() {
        counts = List.of();
        label();
    }

    void setColor(Color color) {
        button.setForeground(color);
    }

    /** Forgets the choice without telling anybody. */
    void reset() {
        chosen = null;
        label();
    }

    private void choose(String value) {
        if (!Objects.equals(chosen, value)) {
            chosen = value;
            label();
            changed.run();
        }
    }

    private void label() {
        var name = FacetWords.name(facet);
        button.setText((chosen == null ? name : NLS.bind(Messages.facetChosen, name, escaped(labelOf(chosen)))) + OPENS);
        button.setToolTipText(tip());
    }

    private String tip() {
        var rest = chosen == null ? Messages.filterTip : Messages.filterRemoveTip;
        return facet == Facet.MACHINE ? rest + "\n" + Messages.machineTip : rest;
    }

    private String labelOf(String value) {
        var hits = counts.stream().filter(count -> count.value().equals(value)).findFirst();
        return hits.map(count -> words(value) + " " + count.hits()).orElseGet(() -> words(value));
    }

    private String words(String value) {
        return catalogue.map(known -> FacetWords.value(facet, value, known)).orElse(value);
    }

    private static String escaped(String text) {
        return text.replace("&", "&&");
    }

    private void openMenu() {
        disposeMenu();
        menu = new Menu(button);
        item(FacetWords.every(facet), null);
        new MenuItem(menu, SWT.SEPARATOR);
        counts.stream().limit(MOST_VALUES)
                .forEach(count -> item(escaped(words(count.value())) + "\t" + count.hits(), count.value()));
        menu.setLocation(button.toDisplay(0, button.getSize().y));
        menu.setVisible(true);
    }

    private void item(String text, String value) {
        var item = new MenuItem(menu, SWT.RADIO);
        item.setText(text);
        item.setData(value);
        item.setSelection(Objects.equals(chosen, value));
        item.addListener(SWT.Selection, event -> {
            if (item.getSelection()) {
                choose(value);
            }
        });
    }

    private void disposeMenu() {
        if (menu != null) {
            menu.dispose();
            menu = null;
        }
    }
}
