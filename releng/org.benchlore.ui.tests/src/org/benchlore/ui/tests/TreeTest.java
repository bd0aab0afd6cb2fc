// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TreeTest {

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private Text filter;
    private Tree tree;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        filter = window.find("tree.filter", Text.class);
        tree = window.find("tree.nodes", Tree.class);
        window.waitUntil("the tree is filled", () -> tree.getItemCount() > 0);
        window.focus(filter);
    }

    @AfterEach
    void close() throws Exception {
        filter.setText("");
        library.close();
    }

    private static List<String> labels(TreeItem[] items) {
        var labels = new ArrayList<String>();
        for (var item : items) {
            labels.add(item.getText());
            if (item.getExpanded()) {
                labels.addAll(labels(item.getItems()));
            }
        }
        return labels;
    }

    @Test
    void machinesStandFirstAndEverythingByKindLast() {
        var labels = labels(tree.getItems());
        assertEquals("Dravholm HL 26 hook-lift lorry", labels.get(0));
        assertTrue(labels.get(labels.size() - 1).startsWith("Everything by kind"));
    }

    @Test
    void filterShowsWhatHoldsEveryTypedWord() {
        window.type("fresh install");
        window.waitUntil("only few are left",
                () -> labels(tree.getItems()).stream().anyMatch(label -> label.startsWith("Learning fails")));
        assertTrue(labels(tree.getItems()).stream().noneMatch(label -> label.contains("Quillfen")));
        window.screenshot("tree-filter");
    }

    @Test
    void escapeClearsTheFilter() {
        window.type("fresh");
        window.press(SWT.ESC);
        window.waitUntil("the filter is empty", () -> filter.getText().isEmpty());
        window.waitUntil("everything is back",
                () -> labels(tree.getItems()).stream().anyMatch(label -> label.contains("Quillfen")));
    }

    @Test
    void downGoesIntoTheTreeAndEnterOpensThePage() {
        window.press(SWT.ARROW_DOWN);
        window.waitUntil("the cursor is in the tree", tree::isFocusControl);
        window.press(SWT.CR);
        var page = window.find("page.text", StyledText.class);
        window.waitUntil("the page of the machine is there", () -> page.getText().startsWith("Dravholm HL 26"));
        window.screenshot("machine");
    }
}
