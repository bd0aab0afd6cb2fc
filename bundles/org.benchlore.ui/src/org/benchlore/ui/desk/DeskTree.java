// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Icons;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/** The lines of the desk under their headings. After a change the cursor stays where it was. */
final class DeskTree {

    private static final int TITLE_WEIGHT = 55;
    private static final int WORDS_WEIGHT = 45;
    private static final int LEAST_WIDTH = 160;

    private final Composite frame;
    private final Tree tree;
    private final Icons icons;

    DeskTree(Composite parent) {
        frame = new Composite(parent, SWT.NONE);
        var layout = new TreeColumnLayout();
        frame.setLayout(layout);
        tree = new Tree(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        tree.setHeaderVisible(true);
        tree.setData(Ids.WIDGET_ID, "desk.tree");
        icons = new Icons(tree);
        column(layout, Messages.columnTitle, TITLE_WEIGHT);
        column(layout, Messages.columnWords, WORDS_WEIGHT);
    }

    private void column(TreeColumnLayout layout, String title, int weight) {
        var column = new TreeColumn(tree, SWT.NONE);
        column.setText(title);
        layout.setColumnData(column, new ColumnWeightData(weight, LEAST_WIDTH, true));
    }

    /** Returns what takes the room and the focus. */
    Control control() {
        return frame;
    }

    void onOpen(Consumer<DeskLine> opener) {
        tree.addListener(SWT.DefaultSelection, event -> selected().ifPresent(opener));
    }

    /** Shift and Enter open the other one of a pair. */
    void onOther(Consumer<DeskLine> opener) {
        tree.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.CR && (event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD2) {
                event.doit = false;
                selected().ifPresent(opener);
            }
        });
    }

    void on(char letter, Consumer<DeskLine> action) {
        tree.addListener(SWT.KeyDown, event -> {
            if (Character.toLowerCase(event.character) == letter
                    && (event.stateMask & SWT.MODIFIER_MASK & ~SWT.MOD2) == 0) {
                event.doit = false;
                selected().ifPresent(action);
            }
        });
    }

    private Optional<DeskLine> selected() {
        var selection = tree.getSelection();
        return selection.length == 0 ? Optional.empty() : Optional.ofNullable((DeskLine) selection[0].getData());
    }

    void show(Map<Section, List<DeskLine>> lines) {
        var before = selected();
        int place = before.isPresent() ? tree.getSelection()[0].getParentItem().indexOf(tree.getSelection()[0]) : 0;
        tree.setRedraw(false);
        tree.removeAll();
        lines.forEach(this::add);
        tree.setRedraw(true);
        before.ifPresentOrElse(line -> select(line, place), this::selectFirst);
    }

    private void add(Section section, List<DeskLine> lines) {
        var heading = new TreeItem(tree, SWT.NONE);
        heading.setText(section.title(lines.size()));
        for (var line : lines) {
            var item = new TreeItem(heading, SWT.NONE);
            item.setData(line);
            item.setImage(icons.of(line.row().kind()));
            item.setText(new String[] {line.row().title(), line.words()});
        }
        heading.setExpanded(true);
    }

    /** Where the line is gone, the next one in its section is likely wanted. */
    private void select(DeskLine line, int place) {
        for (var heading : tree.getItems()) {
            for (var item : heading.getItems()) {
                if (line.isSameAs((DeskLine) item.getData())) {
                    tree.setSelection(item);
                    return;
                }
            }
        }
        var section = tree.getItemCount() > line.section().ordinal() ? tree.getItem(line.section().ordinal()) : null;
        if (section != null && section.getItemCount() > 0) {
            tree.setSelection(section.getItem(Math.min(place, section.getItemCount() - 1)));
        } else {
            selectFirst();
        }
    }

    private void selectFirst() {
        for (var heading : tree.getItems()) {
            if (heading.getItemCount() > 0) {
                tree.setSelection(heading.getItem(0));
                return;
            }
        }
    }
}
