// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.form.ClipKeys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** An outline with the buttons, keys and menus of what can be done in it. */
final class OutlinePart {

    private final Composite frame;
    private final Outline outline;
    private final ClipKeys clips;
    private Runnable next = () -> { };

    OutlinePart(Composite parent, OutlineShape shape, ClipKeys clips) {
        this.clips = clips;
        frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 2).applyTo(frame);
        outline = new Outline(frame, shape);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(outline.control());
    }

    Outline outline() {
        return outline;
    }

    /** Begins one more of what is shown, behind it. */
    void addNext() {
        next.run();
    }

    /**
     * Lets the outline be edited.
     *
     * @param edits what is done to what is selected
     * @param first makes the first button
     * @param menu fills the menu above cut, copy and paste; also that of the tree itself
     * @param end fills it below them
     */
    void start(OutlineEdits edits, Consumer<Composite> first, Consumer<Menu> menu, Consumer<Menu> end) {
        next = edits::addNext;
        outline.onKeys(edits::addNext, edits::remove, edits::move, edits::shift);
        clips.on(outline.control(), edits);
        var bar = new Composite(frame, SWT.NONE);
        var layout = new RowLayout();
        layout.marginLeft = 0;
        bar.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(bar);
        first.accept(bar);
        button(bar, "outline.remove", Messages.removeShort, edits::remove).setToolTipText(Messages.removeKeys);
        button(bar, "outline.up", Messages.upShort, () -> edits.move(-1)).setToolTipText(Messages.upKeys);
        button(bar, "outline.down", Messages.downShort, () -> edits.move(1)).setToolTipText(Messages.downKeys);
        var more = button(bar, "outline.more", Messages.more, () -> { });
        dropDown(more, menu(more, edits, menu, end));
        outline.control().setMenu(menu(outline.control(), edits, menu, end));
    }

    /** Lets a button show a menu below it. */
    static void dropDown(Button button, Menu menu) {
        button.addListener(SWT.Selection, event -> {
            menu.setLocation(button.toDisplay(0, button.getSize().y));
            menu.setVisible(true);
        });
    }

    static Button button(Composite bar, String id, String words, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Menu menu(Control owner, OutlineEdits edits, Consumer<Menu> first, Consumer<Menu> end) {
        var menu = new Menu(owner);
        first.accept(menu);
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, Messages.cutMenu, () -> clips.cut(edits));
        item(menu, Messages.copyMenu, () -> clips.copy(edits));
        item(menu, Messages.pasteMenu, () -> clips.paste(edits));
        new MenuItem(menu, SWT.SEPARATOR);
        end.accept(menu);
        return menu;
    }

    static MenuItem item(Menu menu, String words, Runnable action) {
        var item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, event -> action.run());
        return item;
    }
}
