// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.util.List;
import java.util.function.Consumer;

import org.benchlore.edit.desk.Chips.Chip;
import org.benchlore.edit.desk.MinuteNote;
import org.benchlore.edit.desk.Proposal;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What is seen of a note while it is written: text, chips, photos, and a line that says what to do. */
final class NoteForm {

    static final int WIDTH = 660;
    private static final int MARGIN = 10;
    private static final int LINES = 5;
    private static final int LEAST_LINES = 3;

    private final Composite area;
    private final Text text;
    private final Label chipsLabel;
    private final ChipRow chips;
    private final Label said;
    private final Pasting pasting;

    NoteForm(Composite area, MinuteNote minute, PhotoWork work, boolean isInvented, Consumer<Proposal> toggle) {
        this.area = area;
        GridLayoutFactory.fillDefaults().margins(MARGIN, 8).spacing(0, 6).applyTo(area);
        if (isInvented) {
            invented();
        }
        new Label(area, SWT.NONE).setText(Messages.whatWasLearned);
        text = createText(minute);
        chipsLabel = new Label(area, SWT.NONE);
        chipsLabel.setText(Messages.chipsLabel);
        GridDataFactory.fillDefaults().exclude(true).applyTo(chipsLabel);
        chipsLabel.setVisible(false);
        chips = new ChipRow(area, toggle);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).exclude(true).applyTo(chips.control());
        var photos = new PhotoStrip(area, minute, work, this::grow, this::pasteOrSay);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(photos.control());
        pasting = new Pasting(area, photos);
        pasting.takeDrops();
        area.addListener(SWT.Resize, event -> fit());
        said = new Label(area, SWT.WRAP);
        said.setData(Ids.WIDGET_ID, "note.problem");
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, 2 * text.getLineHeight()).applyTo(said);
        text.setFocus();
    }

    private void invented() {
        var banner = new Label(area, SWT.WRAP);
        banner.setData(Ids.WIDGET_ID, "note.invented");
        banner.setText(Messages.invented);
        var palette = new Palette();
        Runnable paint = () -> {
            banner.setBackground(palette.color("INVENTED"));
            banner.setForeground(palette.color("INVENTED_WORDS"));
        };
        // The theme paints new widgets a moment later; this comes after that.
        banner.getDisplay().asyncExec(() -> {
            if (!banner.isDisposed()) {
                paint.run();
            }
        });
        palette.onChange(banner, paint);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(banner);
    }

    private Text createText(MinuteNote minute) {
        var field = new Text(area, SWT.MULTI | SWT.BORDER | SWT.WRAP | SWT.V_SCROLL);
        field.setData(Ids.WIDGET_ID, "note.text");
        var begun = minute.note().getText() == null ? "" : minute.note().getText();
        field.setText(begun);
        field.setSelection(begun.length());
        Keys.name(field, Messages.textName);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, LINES * field.getLineHeight())
                .minSize(SWT.DEFAULT, LEAST_LINES * field.getLineHeight()).applyTo(field);
        field.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        return field;
    }

    /** Words are pasted as words; only a clipboard without words gives a photo. */
    void paste() {
        if (area.getDisplay().getFocusControl() instanceof Text field && pasting.holdsText()) {
            field.paste();
        } else {
            pasteOrSay();
        }
    }

    private void pasteOrSay() {
        if (!pasting.paste()) {
            say(Messages.nothingToPaste);
        }
    }

    Text text() {
        return text;
    }

    void show(List<Chip> all) {
        if (chips.show(all)) {
            chipsLabel.setVisible(!all.isEmpty());
            ((GridData) chipsLabel.getLayoutData()).exclude = all.isEmpty();
            ((GridData) chips.control().getLayoutData()).exclude = all.isEmpty();
            grow();
        }
    }

    void say(String sentence) {
        said.setText(sentence.replace("&", "&&"));
    }

    /** Chips take as many rows as the width asks for. */
    private void fit() {
        ((GridData) chips.control().getLayoutData()).widthHint = Math.max(1, area.getClientArea().width - 2 * MARGIN);
        area.layout(true, true);
    }

    /** What came in needs room: from below, as far as the screen goes; the text gives way for the rest. */
    private void grow() {
        var shell = area.getShell();
        if (shell.isVisible()) {
            fit();
            var screen = shell.getMonitor().getClientArea();
            int wanted = shell.computeSize(shell.getSize().x, SWT.DEFAULT).y;
            int most = screen.y + screen.height - shell.getLocation().y;
            if (wanted > shell.getSize().y && most < wanted) {
                shell.setLocation(shell.getLocation().x, Math.max(screen.y, screen.y + screen.height - wanted));
                most = screen.height;
            }
            shell.setSize(shell.getSize().x, Math.max(shell.getSize().y, Math.min(wanted, most)));
        }
    }
}
