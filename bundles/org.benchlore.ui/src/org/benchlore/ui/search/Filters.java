// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.benchlore.search.Facet;
import org.benchlore.search.Results.Count;
import org.benchlore.store.Catalogue;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/**
 * A row of lists that narrow the search, one for each facet that has something to choose. Arrows go along the row,
 * Delete removes a choice; Escape does so too, and leaves the row where there is none.
 */
final class Filters {

    private static final int GAP = 4;

    private final Composite row;
    private final List<FacetButton> buttons;
    private final Button remove;
    private final Palette palette = new Palette();
    private final Runnable changed;
    private boolean stale;

    /** Makes the row; {@code changed} is run when a choice changes, {@code leave} when Escape leaves it. */
    Filters(Composite parent, Runnable changed, Runnable leave) {
        this.changed = changed;
        row = new Composite(parent, SWT.NONE);
        row.setData(Ids.WIDGET_ID, "search.filters");
        row.setLayout(rowLayout());
        buttons = Arrays.stream(Facet.values()).map(facet -> new FacetButton(row, facet, this::chosen)).toList();
        remove = removeButton(leave);
        buttons.forEach(button -> addKeys(button, leave));
        palette.onChange(row, this::colour);
        lay();
    }

    private static RowLayout rowLayout() {
        var layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.marginLeft = 0;
        layout.marginRight = 0;
        layout.spacing = GAP;
        layout.center = true;
        return layout;
    }

    private Button removeButton(Runnable leave) {
        var button = new Button(row, SWT.PUSH);
        button.setText(Messages.removeFilters);
        button.setData(Ids.WIDGET_ID, "search.filters.remove");
        button.setLayoutData(new RowData());
        button.addListener(SWT.Selection, event -> removeAll(leave));
        Keys.on(button, SWT.CR, () -> removeAll(leave));
        Keys.on(button, SWT.ESC, leave);
        return button;
    }

    private void addKeys(FacetButton button, Runnable leave) {
        Keys.on(button.control(), SWT.ESC, () -> {
            if (button.chosen().isPresent()) {
                button.reset();
                chosen();
            } else {
                leave.run();
            }
        });
        Keys.on(button.control(), SWT.ARROW_RIGHT, () -> button.control().traverse(SWT.TRAVERSE_TAB_NEXT));
        Keys.on(button.control(), SWT.ARROW_LEFT, () -> button.control().traverse(SWT.TRAVERSE_TAB_PREVIOUS));
    }

    Composite control() {
        return row;
    }

    Map<Facet, String> chosenValues() {
        var values = new EnumMap<Facet, String>(Facet.class);
        buttons.forEach(button -> button.chosen().ifPresent(value -> values.put(button.facet(), value)));
        return values;
    }

    boolean isEmpty() {
        return chosenValues().isEmpty();
    }

    private void removeAll(Runnable leave) {
        removeAll();
        leave.run();
    }

    /** Removes every choice and asks again. */
    void removeAll() {
        if (!isEmpty()) {
            reset();
            chosen();
        }
    }

    /** Removes every choice without asking again. */
    void reset() {
        buttons.forEach(FacetButton::reset);
        lay();
    }

    private void chosen() {
        lay();
        changed.run();
    }

    /** Takes the counts away; what was chosen stays. */
    void clear() {
        buttons.forEach(FacetButton::clear);
        setStale(false);
        lay();
    }

    void show(Map<Facet, List<Count>> counts, Catalogue catalogue) {
        buttons.forEach(button -> button.show(counts.getOrDefault(button.facet(), List.of()), catalogue));
        setStale(false);
        lay();
    }

    /** Greys what was counted for another question, until the new counts are there. */
    void setStale(boolean next) {
        stale = next;
        colour();
    }

    /** The last button keeps the theme's own colour. */
    private void colour() {
        var color = stale ? palette.color("LABEL") : remove.getForeground();
        buttons.forEach(button -> button.setColor(color));
    }

    private void lay() {
        for (var button : buttons) {
            setShown(button.control(), button.isOffered());
        }
        setShown(remove, !isEmpty());
        row.getParent().layout(true, true);
        row.getParent().getParent().layout();
    }

    private static void setShown(Button button, boolean shown) {
        ((RowData) button.getLayoutData()).exclude = !shown;
        button.setVisible(shown);
    }
}
