// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Icons;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** An element with what is in it, as a tree; what is selected is shown in the form beside it. */
final class Outline {

    private record Line(EObject node, int depth) {
    }

    private final OutlineShape shape;
    private final Tree tree;
    private final Icons icons;
    private List<Line> shown = List.of();
    private Consumer<EObject> listener = element -> { };

    Outline(Composite parent, OutlineShape shape) {
        this.shape = shape;
        this.tree = new Tree(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.BORDER | SWT.FULL_SELECTION);
        this.icons = new Icons(tree);
        tree.setData(Ids.WIDGET_ID, "form.outline");
        Keys.name(tree, shape.name());
        tree.addListener(SWT.Selection, event -> selected().ifPresent(listener));
        refresh();
    }

    Tree control() {
        return tree;
    }

    OutlineShape shape() {
        return shape;
    }

    void onSelect(Consumer<EObject> next) {
        listener = next;
    }

    /** What is selected; a heading counts as the element itself. */
    Optional<EObject> selected() {
        return node().map(node -> node instanceof EReference ? shape.root() : node);
    }

    /** What is selected, be it a heading. */
    Optional<EObject> node() {
        return tree.getSelectionCount() == 0 ? Optional.empty()
                : Optional.of((EObject) tree.getSelection()[0].getData());
    }

    /** Selects an element and shows its form. */
    void select(EObject element) {
        item(element).ifPresent(item -> {
            tree.setSelection(item);
            tree.showSelection();
            selected().ifPresent(listener);
        });
    }

    /** Selects what stands so many places further down, or up. */
    void step(int by) {
        var places = shown.stream().map(Line::node).filter(node -> !(node instanceof EReference)).toList();
        int next = places.indexOf(selected().orElse(shape.root())) + by;
        if (next >= 0 && next < places.size()) {
            select(places.get(next));
        }
    }

    /** Selects the nearest that is shown of an element and those it is in. */
    void selectNearest(EObject element) {
        var at = element;
        while (at != null && !isShown(at)) {
            at = at.eContainer();
        }
        if (at != null) {
            select(at);
        }
    }

    private boolean isShown(EObject element) {
        return shown.stream().anyMatch(line -> line.node() == element);
    }

    void refresh() {
        var now = new ArrayList<Line>();
        list(shape.root(), 0, now);
        if (!now.equals(shown)) {
            rebuild(now);
        }
        rename(tree.getItems());
    }

    private void list(EObject node, int depth, List<Line> all) {
        all.add(new Line(node, depth));
        shape.children(node).forEach(child -> list(child, depth + 1, all));
    }

    private void rename(TreeItem[] items) {
        for (var item : items) {
            var words = shape.words((EObject) item.getData());
            if (!item.getText().equals(words)) {
                item.setText(words);
            }
            rename(item.getItems());
        }
    }

    private void rebuild(List<Line> now) {
        var before = node();
        int place = Math.max(0, before.map(node -> shown.stream().map(Line::node).toList().indexOf(node)).orElse(0));
        var closed = new HashSet<EObject>();
        var known = new HashSet<EObject>();
        remember(tree.getItems(), known, closed);
        shown = List.copyOf(now);
        tree.setRedraw(false);
        tree.removeAll();
        build(new TreeItem(tree, SWT.NONE), shape.root());
        open(tree.getItems(), known, closed);
        tree.setRedraw(true);
        select(before.filter(this::isShown).orElseGet(() -> now.get(Math.min(place, now.size() - 1)).node()));
    }

    /** What was opened or closed by hand stays so. */
    private static void remember(TreeItem[] items, Set<EObject> known, Set<EObject> closed) {
        for (var item : items) {
            if (item.getItemCount() > 0) {
                known.add((EObject) item.getData());
                if (!item.getExpanded()) {
                    closed.add((EObject) item.getData());
                }
            }
            remember(item.getItems(), known, closed);
        }
    }

    private void build(TreeItem item, EObject node) {
        item.setData(node);
        item.setText(shape.words(node));
        shape.icon(node).ifPresent(name -> item.setImage(icons.named(name)));
        shape.children(node).forEach(child -> build(new TreeItem(item, SWT.NONE), child));
    }

    /** From the top down: what stands in a closed item cannot be opened. */
    private void open(TreeItem[] items, Set<EObject> known, Set<EObject> closed) {
        for (var item : items) {
            var node = (EObject) item.getData();
            if (item.getItemCount() > 0) {
                item.setExpanded(known.contains(node) ? !closed.contains(node) : shape.isOpen(node));
                open(item.getItems(), known, closed);
            }
        }
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

    /** Enter goes into the form of what is selected. */
    void onEnter(Runnable action) {
        tree.addListener(SWT.DefaultSelection, event -> action.run());
    }

    /** Alt with an arrow up or down, Control and Shift with one to the side, Delete, Insert. */
    void onKeys(Runnable add, Runnable remove, IntConsumer move, IntConsumer shift) {
        Keys.on(tree, SWT.DEL, remove);
        Keys.on(tree, SWT.INSERT, add);
        onArrows(SWT.ALT, SWT.ARROW_UP, SWT.ARROW_DOWN, move);
        // Alt with an arrow to the side goes back to the page before.
        onArrows(SWT.MOD1 | SWT.MOD2, SWT.ARROW_LEFT, SWT.ARROW_RIGHT, shift);
    }

    private void onArrows(int held, int back, int on, IntConsumer action) {
        tree.addListener(SWT.KeyDown, (Event event) -> {
            int by = event.keyCode == back ? -1 : event.keyCode == on ? 1 : 0;
            if (by != 0 && (event.stateMask & SWT.MODIFIER_MASK) == held) {
                event.doit = false;
                action.accept(by);
            }
        });
    }
}
