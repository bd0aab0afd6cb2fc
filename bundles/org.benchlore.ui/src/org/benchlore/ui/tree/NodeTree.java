// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.ui.look.Icons;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** A native tree that asks for its rows when they come into sight, so that ten thousand of them cost nothing. */
final class NodeTree {

    private final Tree tree;
    private final Icons icons;
    private final Set<String> open = new HashSet<>();
    private List<TreeNode> roots = List.of();

    NodeTree(Composite parent) {
        this.tree = new Tree(parent, SWT.VIRTUAL | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        this.icons = new Icons(tree);
        tree.addListener(SWT.SetData, this::fill);
        tree.addListener(SWT.Expand, event -> open.add(node((TreeItem) event.item).key()));
        tree.addListener(SWT.Collapse, event -> open.remove(node((TreeItem) event.item).key()));
    }

    Tree control() {
        return tree;
    }

    void onOpen(Consumer<Address> opener) {
        tree.addListener(SWT.DefaultSelection, event -> {
            var item = (TreeItem) event.item;
            if (node(item).target().isEmpty()) {
                toggle(item);
            } else {
                opener.accept(node(item).target().get());
            }
        });
    }

    /** What the selected node leads to. */
    Optional<Address> selected() {
        var selection = tree.getSelection();
        return selection.length == 0 ? Optional.empty() : node(selection[0]).target();
    }

    private void toggle(TreeItem item) {
        item.setExpanded(!item.getExpanded());
        if (item.getExpanded()) {
            open.add(node(item).key());
        } else {
            open.remove(node(item).key());
        }
    }

    /**
     * Shows other nodes; what was open and selected stays so.
     *
     * @param nodes the top nodes
     * @param openAll whether every branch is opened
     */
    void show(List<TreeNode> nodes, boolean openAll) {
        var selected = selectedKey();
        roots = nodes;
        tree.setRedraw(false);
        tree.removeAll();
        tree.setItemCount(nodes.size());
        expand(tree.getItems(), openAll);
        selected.ifPresent(key -> select(tree.getItems(), key));
        tree.setRedraw(true);
    }

    private void expand(TreeItem[] items, boolean all) {
        for (var item : items) {
            materialise(item);
            var node = node(item);
            if (!node.children().isEmpty() && (all || open.contains(node.key()))) {
                item.setExpanded(true);
                expand(item.getItems(), all);
            }
        }
    }

    private boolean select(TreeItem[] items, String key) {
        for (var item : items) {
            materialise(item);
            if (node(item).key().equals(key)) {
                tree.setSelection(item);
                return true;
            }
            if (item.getExpanded() && select(item.getItems(), key)) {
                return true;
            }
        }
        return false;
    }

    private Optional<String> selectedKey() {
        var selection = tree.getSelection();
        return selection.length == 0 ? Optional.empty() : Optional.of(node(selection[0]).key());
    }

    void focusFirst() {
        tree.setFocus();
        if (tree.getSelectionCount() == 0 && tree.getItemCount() > 0) {
            tree.setSelection(tree.getItem(0));
        }
    }

    private void fill(Event event) {
        var item = (TreeItem) event.item;
        var above = item.getParentItem();
        var brothers = above == null ? roots : node(above).children();
        var node = brothers.get(event.index);
        item.setData(node);
        item.setText(node.text());
        item.setImage(icons.named(node.icon()));
        item.setItemCount(node.children().size());
    }

    private static void materialise(TreeItem item) {
        item.getText();
    }

    private static TreeNode node(TreeItem item) {
        materialise(item);
        return (TreeNode) item.getData();
    }
}
