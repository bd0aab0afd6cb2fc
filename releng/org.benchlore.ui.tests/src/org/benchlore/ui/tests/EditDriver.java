// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import org.benchlore.model.Address;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.edit.Editing;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

/** Drives editors: opens them, types into fields, saves, answers dialogs that wait. */
final class EditDriver {

    private static final int POLL = 50;

    private final WindowDriver window;
    private boolean isOver;

    EditDriver(WindowDriver window) {
        this.window = window;
    }

    static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    }

    static Editing editing() {
        return PlatformUI.getWorkbench().getService(Editing.class);
    }

    /** Opens the editor of a file without the keyboard. */
    void open(String path, String id) {
        new EditOpener(page()).edit(new Address(path, id));
        window.find("form.head", Label.class);
    }

    IEditorPart editor() {
        return page().getActiveEditor();
    }

    void save() {
        window.pressLetter('s', SWT.CTRL);
        window.waitUntil("it is saved", () -> !editor().isDirty());
    }

    Text text(String id) {
        return window.find(id, Text.class);
    }

    void focus(Control control) {
        window.activate();
        page().activate(editor());
        window.focus(control);
    }

    /** Replaces what stands in a field, as if it was typed. */
    void write(String id, String words) {
        var text = text(id);
        focus(text);
        text.selectAll();
        text.insert(words);
        window.workFor(250);
    }

    String head() {
        return window.find("form.head", Label.class).getText();
    }

    /** Selects an item of the outline by the beginning of its words. */
    TreeItem outline(String start) {
        var tree = window.find("form.outline", Tree.class);
        var item = item(tree.getItems(), start);
        tree.setSelection(item);
        tree.notifyListeners(SWT.Selection, null);
        window.workFor(100);
        return item;
    }

    private static TreeItem item(TreeItem[] items, String start) {
        for (var item : items) {
            if (item.getText().startsWith(start)) {
                return item;
            }
            var inner = item(item.getItems(), start);
            if (inner != null) {
                return inner;
            }
        }
        return null;
    }

    void click(String id) {
        window.find(id, Button.class).notifyListeners(SWT.Selection, null);
        window.workFor(50);
    }

    /** Does something as soon as a dialog is there that keeps everybody waiting. */
    void whenThere(String id, Runnable action) {
        Display.getCurrent().timerExec(POLL, () -> {
            if (window.has(id)) {
                action.run();
            } else if (!isOver) {
                whenThere(id, action);
            }
        });
    }

    /** Does something as soon as a dialog with a title has the keyboard. */
    void whenActive(String title, Runnable action) {
        Display.getCurrent().timerExec(POLL, () -> {
            var active = Display.getCurrent().getActiveShell();
            if (active != null && active.getText().equals(title)) {
                action.run();
            } else if (!isOver) {
                whenActive(title, action);
            }
        });
    }

    void closeAll() {
        isOver = true;
        page().closeAllEditors(false);
        window.workFor(100);
    }
}
