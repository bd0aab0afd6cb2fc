// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.function.Consumer;
import java.util.function.Function;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/**
 * A box of the card. What is typed is looked at with every letter and goes into the record when the fingers rest, the
 * box is left, or Enter is pressed. What cannot be understood stays in the box, and its reason is said.
 */
final class Box {

    private static final int REST = 700;
    private static final int WIDTH = 90;

    private final Text text;
    private Consumer<String> taker = typed -> { };
    private Function<String, String> looker = typed -> "";
    private Consumer<String> sayer = words -> { };
    private boolean isWaiting;
    private boolean isRefused;
    private boolean isShowing;

    Box(Composite parent, String id, String name) {
        text = new Text(parent, SWT.BORDER | SWT.SINGLE);
        text.setData(Ids.WIDGET_ID, id);
        Keys.name(text, name);
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(text);
        text.addListener(SWT.Modify, event -> typed());
        text.addListener(SWT.FocusOut, event -> commit());
    }

    Text control() {
        return text;
    }

    /**
     * Sets what is done.
     *
     * @param take takes what was typed into the record; may refuse it with a sentence
     * @param look says at once what becomes of it; may refuse it with a sentence
     * @param say shows such words
     */
    void on(Consumer<String> take, Function<String, String> look, Consumer<String> say) {
        taker = take;
        looker = look;
        sayer = say;
    }

    private void typed() {
        if (isShowing) {
            return;
        }
        isWaiting = true;
        look();
        var now = text.getText();
        text.getDisplay().timerExec(REST, () -> {
            if (!text.isDisposed() && text.getText().equals(now)) {
                commit();
            }
        });
    }

    private void look() {
        try {
            sayer.accept(looker.apply(text.getText()));
        } catch (IllegalArgumentException e) {
            sayer.accept(e.getMessage());
        }
    }

    /** Takes what was typed and is not taken yet. */
    void commit() {
        if (isWaiting && !text.isDisposed()) {
            isWaiting = false;
            try {
                taker.accept(text.getText());
                isRefused = false;
                look();
            } catch (IllegalArgumentException e) {
                isRefused = true;
                sayer.accept(e.getMessage());
            }
        }
    }

    boolean isRefused() {
        return isRefused;
    }

    /** Shows what the record holds, unless somebody is typing; a refused text goes when it was taken back. */
    void show(String value, boolean isTakenBack) {
        if (isWaiting || isRefused && !isTakenBack) {
            return;
        }
        isRefused = false;
        if (!text.getText().equals(value) && !(text.isFocusControl() && text.getText().strip().equals(bare(value)))) {
            isShowing = true;
            text.setText(value);
            isShowing = false;
        }
        look();
    }

    /** The figure alone, to which the unit was put. */
    private static String bare(String value) {
        int blank = value.indexOf(' ');
        return blank < 0 ? value : value.substring(0, blank);
    }
}
