// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.List;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Stands where the hits would stand if there were any: says what to do, and offers to do it. */
final class Guide {

    private static final int MARGIN = 6;

    private final ScrolledComposite scrolled;
    private final Composite body;
    private final Label words;
    private final Composite buttons;
    private final Runnable leave;
    private List<Action> shown = List.of();

    /**
     * Something to do.
     *
     * @param id of the button, for tests
     * @param label what it is called
     * @param run does it
     */
    record Action(String id, String label, Runnable run) {
    }

    Guide(Composite parent, Runnable leave) {
        this.leave = leave;
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        body = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).spacing(0, MARGIN).applyTo(body);
        words = new Label(body, SWT.WRAP);
        words.setData(Ids.WIDGET_ID, "search.guide");
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(words);
        buttons = row(body);
        scrolled.setContent(body);
        scrolled.addListener(SWT.Resize, event -> measure());
    }

    private static Composite row(Composite body) {
        var row = new Composite(body, SWT.NONE);
        var layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.spacing = MARGIN;
        row.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(row);
        return row;
    }

    Control control() {
        return scrolled;
    }

    /** Shows words and actions; where the same buttons are there already they stay, with the cursor. */
    void show(String text, List<Action> actions) {
        var same = labels(actions).equals(labels(shown));
        shown = List.copyOf(actions);
        words.setText(text.replace("&", "&&"));
        if (!same) {
            replaceButtons();
        }
        measure();
    }

    private static List<String> labels(List<Action> actions) {
        return actions.stream().map(action -> action.id() + " " + action.label()).toList();
    }

    private void replaceButtons() {
        var hadCursor = false;
        for (var old : buttons.getChildren()) {
            hadCursor |= old.isFocusControl();
            old.dispose();
        }
        for (int i = 0; i < shown.size(); i++) {
            add(i);
        }
        body.layout(true, true);
        if (hadCursor && !focusFirst()) {
            leave.run();
        }
    }

    private void add(int index) {
        var button = new Button(buttons, SWT.PUSH);
        button.setText(shown.get(index).label());
        button.setData(Ids.WIDGET_ID, shown.get(index).id());
        button.addListener(SWT.Selection, event -> shown.get(index).run().run());
        Keys.on(button, SWT.CR, () -> shown.get(index).run().run());
        Keys.on(button, SWT.ESC, leave);
    }

    boolean focusFirst() {
        return buttons.getChildren().length > 0 && buttons.getChildren()[0].setFocus();
    }

    /** The height depends on the width, since words and buttons are wrapped. */
    private void measure() {
        int width = Math.max(1, scrolled.getClientArea().width - 2 * MARGIN);
        int height = words.computeSize(width, SWT.DEFAULT).y + 3 * MARGIN + buttons.computeSize(width, SWT.DEFAULT).y;
        scrolled.setMinSize(width, height);
        ((GridData) words.getLayoutData()).heightHint = words.computeSize(width, SWT.DEFAULT).y;
        ((GridData) buttons.getLayoutData()).heightHint =
                buttons.computeSize(width, SWT.DEFAULT).y;
        body.layout(true, true);
    }
}
