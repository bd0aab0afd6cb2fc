// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.Way;
import org.benchlore.store.ElementTitle;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** The procedure with its ways and their steps in order; what is selected is shown in the form beside it. */
final class Outline {

    private final Procedure procedure;
    private final Tree tree;
    private List<EObject> shown = List.of();
    private Consumer<EObject> listener = element -> { };

    Outline(Composite parent, Procedure procedure) {
        this.procedure = procedure;
        this.tree = new Tree(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.BORDER | SWT.FULL_SELECTION);
        tree.setData(Ids.WIDGET_ID, "form.outline");
        Keys.name(tree, Messages.outlineName);
        tree.addListener(SWT.Selection, event -> selected().ifPresent(listener));
        refresh();
    }

    Tree control() {
        return tree;
    }

    void onSelect(Consumer<EObject> next) {
        listener = next;
    }

    Optional<EObject> selected() {
        return tree.getSelectionCount() == 0 ? Optional.empty()
                : Optional.of((EObject) tree.getSelection()[0].getData());
    }

    /** Selects an element and shows its form. */
    void select(EObject element) {
        item(element).ifPresent(item -> {
            tree.setSelection(item);
            tree.showSelection();
            listener.accept(element);
        });
    }

    /** Selects what stands so many places further down, or up. */
    void step(int by) {
        int next = shown.indexOf(selected().orElse(procedure)) + by;
        if (next >= 0 && next < shown.size()) {
            select(shown.get(next));
        }
    }

    /** Selects the nearest that is shown of an element and those it is in. */
    void selectNearest(EObject element) {
        var at = element;
        while (at != null && !shown.contains(at)) {
            at = at.eContainer();
        }
        if (at != null) {
            select(at);
        }
    }

    void refresh() {
        var now = all();
        if (!now.equals(shown)) {
            rebuild(now);
        }
        shown.forEach(element -> item(element).ifPresent(item -> {
            if (!item.getText().equals(words(element))) {
                item.setText(words(element));
            }
        }));
    }

    private List<EObject> all() {
        var all = new ArrayList<EObject>();
        all.add(procedure);
        for (var way : procedure.getWays()) {
            all.add(way);
            if (way.getWork() != null) {
                all.addAll(way.getWork().getSteps());
            }
        }
        return all;
    }

    private void rebuild(List<EObject> now) {
        var before = selected();
        int place = before.map(shown::indexOf).orElse(0);
        shown = now;
        tree.setRedraw(false);
        tree.removeAll();
        var root = item(new TreeItem(tree, SWT.NONE), procedure);
        for (var way : procedure.getWays()) {
            var branch = item(new TreeItem(root, SWT.NONE), way);
            root.setExpanded(true);
            if (way.getWork() != null) {
                way.getWork().getSteps().forEach(step -> item(new TreeItem(branch, SWT.NONE), step));
            }
            branch.setExpanded(true);
        }
        tree.setRedraw(true);
        select(before.filter(now::contains).orElseGet(() -> now.get(Math.min(place, now.size() - 1))));
    }

    private TreeItem item(TreeItem item, EObject element) {
        item.setData(element);
        item.setText(words(element));
        return item;
    }

    private Optional<TreeItem> item(EObject element) {
        return find(tree.getItems(), element);
    }

    private static Optional<TreeItem> find(TreeItem[] items, EObject element) {
        for (var item : items) {
            var found = item.getData() == element ? Optional.of(item) : find(item.getItems(), element);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** What an element is called in the outline. */
    String words(EObject element) {
        if (element instanceof Way way) {
            int number = procedure.getWays().indexOf(way) + 1;
            return way.getTitle() == null ? NLS.bind(Messages.wayNumber, number) : way.getTitle();
        }
        return element instanceof Step step ? words(step) : ElementTitle.of(procedure);
    }

    private static String words(Step step) {
        int number = ((List<?>) step.eContainer().eGet(step.eContainmentFeature())).indexOf(step) + 1;
        var text = step.getText() == null ? "" : step.getText().strip().lines().findFirst().orElse("");
        return number + ". " + (text.isEmpty() ? Messages.stepEmpty : text);
    }

    /** Enter goes into the form of what is selected. */
    void onEnter(Runnable action) {
        tree.addListener(SWT.DefaultSelection, event -> action.run());
    }

    /** Alt with an arrow, Delete, Insert. */
    void onKeys(Runnable add, Runnable remove, Consumer<Integer> move) {
        Keys.on(tree, SWT.DEL, remove);
        Keys.on(tree, SWT.INSERT, add);
        tree.addListener(SWT.KeyDown, event -> move(event, move));
    }

    private static void move(Event event, Consumer<Integer> move) {
        int by = event.keyCode == SWT.ARROW_UP ? -1 : event.keyCode == SWT.ARROW_DOWN ? 1 : 0;
        if (by != 0 && (event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT) {
            event.doit = false;
            move.accept(by);
        }
    }
}
