// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.benchlore.model.Kind;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Icons;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/** The card as a tree: what came in, the rounds with their lines in order, what stands at the end. */
final class JobTree {

    private static final int WORDS = 72;
    private static final int REMARK = 28;
    private static final int LEAST = 60;

    private final Composite frame;
    private final Tree tree;
    private final Icons icons;
    private final Set<String> closed = new HashSet<>();
    private Optional<String> selected = Optional.empty();

    JobTree(Composite parent) {
        frame = new Composite(parent, SWT.NONE);
        var layout = new TreeColumnLayout();
        frame.setLayout(layout);
        tree = new Tree(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        tree.setData(Ids.WIDGET_ID, "job.tree");
        Keys.name(tree, Messages.treeName);
        layout.setColumnData(new TreeColumn(tree, SWT.NONE), new ColumnWeightData(WORDS, 2 * LEAST, true));
        layout.setColumnData(new TreeColumn(tree, SWT.NONE), new ColumnWeightData(REMARK, LEAST, true));
        icons = new Icons(tree);
        tree.addListener(SWT.Collapse, event -> closed.add(((Node) event.item.getData()).key()));
        tree.addListener(SWT.Expand, event -> closed.remove(((Node) event.item.getData()).key()));
    }

    Control control() {
        return frame;
    }

    Tree tree() {
        return tree;
    }

    void onSelect(Consumer<Node> listener) {
        tree.addListener(SWT.Selection, event -> {
            selected = Optional.of(((Node) event.item.getData()).key());
            listener.accept((Node) event.item.getData());
        });
    }

    void onEnter(Runnable action) {
        Keys.on(tree, SWT.CR, action);
        Keys.on(tree, SWT.KEYPAD_CR, action);
    }

    void show(Nodes nodes) {
        var kept = tree.getTopItem() == null ? null : ((Node) tree.getTopItem().getData()).key();
        tree.setRedraw(false);
        tree.removeAll();
        for (var node : nodes.top()) {
            var item = item(new TreeItem(tree, SWT.NONE), nodes, node);
            for (var inner : nodes.below(node)) {
                item(new TreeItem(item, SWT.NONE), nodes, inner);
            }
            item.setExpanded(!closed.contains(node.key()));
        }
        selected.flatMap(key -> find(node -> node.key().equals(key))).ifPresent(tree::setSelection);
        find(node -> node.key().equals(kept)).ifPresent(tree::setTopItem);
        selected.flatMap(key -> find(node -> node.key().equals(key))).ifPresent(tree::showItem);
        tree.setRedraw(true);
    }

    private TreeItem item(TreeItem item, Nodes nodes, Node node) {
        item.setData(node);
        item.setText(new String[] {nodes.words(node), nodes.remark(node)});
        item.setImage(node instanceof Node.OfTask task ? icons.named(icon(task.task().part()))
                : node instanceof Node.OfRound ? icons.of(Kind.JOB) : icons.named("page"));
        return item;
    }

    private static String icon(Part part) {
        return switch (part) {
            case STRIP -> "strip";
            case REFIT -> "refit";
            default -> "procedure";
        };
    }

    List<TreeItem> items() {
        var all = new ArrayList<TreeItem>();
        for (var item : tree.getItems()) {
            all.add(item);
            all.addAll(List.of(item.getItems()));
        }
        return all;
    }

    private Optional<TreeItem> find(Predicate<Node> wanted) {
        return items().stream().filter(item -> wanted.test((Node) item.getData())).findFirst();
    }

    Optional<Node> select(Predicate<Node> wanted) {
        var item = find(wanted);
        item.ifPresent(one -> {
            tree.setSelection(one);
            tree.showItem(one);
            selected = Optional.of(((Node) one.getData()).key());
        });
        return item.map(one -> (Node) one.getData());
    }

    Optional<Node> selected() {
        return selected.flatMap(key -> find(node -> node.key().equals(key))).map(item -> (Node) item.getData());
    }

    /** The first node behind the selected one that fits, else the first of all. */
    Optional<Node> after(Predicate<Node> wanted) {
        var nodes = items().stream().map(item -> (Node) item.getData()).toList();
        int at = selected.map(key -> nodes.stream().map(Node::key).toList().indexOf(key)).orElse(-1);
        return nodes.stream().skip(at + 1L).filter(wanted).findFirst().or(() -> nodes.stream().filter(wanted).findFirst());
    }
}
