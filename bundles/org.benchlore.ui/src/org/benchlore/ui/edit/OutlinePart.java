// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.model.Procedure;
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

/** The outline with what can be done in it: steps and ways added, moved, duplicated, removed, taken from elsewhere. */
final class OutlinePart {

    private final Composite frame;
    private final Outline outline;
    private final Optional<StepEdits> edits;
    private final ClipKeys clips;
    private final Optional<Sessions> sessions;

    OutlinePart(Composite parent, Procedure procedure, Optional<EditSession> session, Optional<Sessions> sessions,
            ClipKeys clips) {
        this.sessions = sessions;
        this.clips = clips;
        frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 2).applyTo(frame);
        outline = new Outline(frame, procedure);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(outline.control());
        edits = session.map(open -> new StepEdits(open, procedure, outline));
        edits.ifPresent(this::createActions);
    }

    Outline outline() {
        return outline;
    }

    /** Begins a further step behind the one that is shown. */
    void addStep() {
        edits.ifPresent(StepEdits::addStep);
    }

    private void createActions(StepEdits actions) {
        outline.onKeys(actions::addStep, actions::remove, actions::move);
        clips.on(outline.control(), new StepClips(actions));
        var bar = new Composite(frame, SWT.NONE);
        var layout = new RowLayout();
        layout.marginLeft = 0;
        bar.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(bar);
        button(bar, "outline.addStep", Messages.addStep, actions::addStep).setToolTipText(Messages.addStepKeys);
        button(bar, "outline.remove", Messages.removeShort, actions::remove).setToolTipText(Messages.removeKeys);
        button(bar, "outline.up", Messages.upShort, () -> actions.move(-1)).setToolTipText(Messages.upKeys);
        button(bar, "outline.down", Messages.downShort, () -> actions.move(1)).setToolTipText(Messages.downKeys);
        var more = button(bar, "outline.more", Messages.more, () -> { });
        var menu = menu(more, actions);
        more.addListener(SWT.Selection, event -> {
            menu.setLocation(more.toDisplay(0, more.getSize().y));
            menu.setVisible(true);
        });
        outline.control().setMenu(menu(outline.control(), actions));
    }

    private static Button button(Composite bar, String id, String words, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Menu menu(Control owner, StepEdits actions) {
        var menu = new Menu(owner);
        item(menu, Messages.addStepMenu, actions::addStep);
        item(menu, Messages.duplicateMenu, actions::duplicate);
        item(menu, Messages.addWayMenu, actions::addWay);
        item(menu, Messages.insertMenu, () -> insert(actions));
        item(menu, Messages.splitMenu, actions::split);
        var target = new StepClips(actions);
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, Messages.cutMenu, () -> clips.cut(target));
        item(menu, Messages.copyMenu, () -> clips.copy(target));
        item(menu, Messages.pasteMenu, () -> clips.paste(target));
        new MenuItem(menu, SWT.SEPARATOR);
        createWays(menu, actions);
        return menu;
    }

    /** The other ways of the procedure, into which the selected step can be moved. */
    private void createWays(Menu menu, StepEdits actions) {
        var ways = new Menu(menu);
        var cascade = new MenuItem(menu, SWT.CASCADE);
        cascade.setText(Messages.moveToMenu);
        cascade.setMenu(ways);
        menu.addListener(SWT.Show, event -> {
            for (var old : ways.getItems()) {
                old.dispose();
            }
            actions.otherWays().forEach(way ->
                    item(ways, outline.words(way).replace("&", "&&"), () -> actions.moveTo(way)));
            cascade.setEnabled(ways.getItemCount() > 0);
        });
    }

    private static void item(Menu menu, String words, Runnable action) {
        var item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, event -> action.run());
    }

    /** Asks for steps of another procedure and inserts them behind the one that is shown. */
    void insert() {
        edits.ifPresent(this::insert);
    }

    private void insert(StepEdits actions) {
        sessions.ifPresent(open -> new InsertDialog(frame.getShell(), open.library(),
                (String path, List<String> ids) -> actions.insert(open, path, ids)).open());
    }
}
