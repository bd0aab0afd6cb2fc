// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.List;

import org.benchlore.search.Passage.Mark;
import org.benchlore.ui.look.Palette;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.graphics.TextStyle;
import org.eclipse.swt.widgets.Control;

/** Draws one line with places marked. Where there is no room it is cut, but so that the first mark is seen. */
final class MarkedLine {

    private static final String CUT = "…";
    private static final double BEFORE_MARK = 0.3;

    private final TextLayout layout;
    private final Palette palette;
    private final Font bold;

    /** Makes it; it is given back with the control. */
    MarkedLine(Control owner, Palette palette) {
        this.palette = palette;
        layout = new TextLayout(owner.getDisplay());
        layout.setFont(owner.getFont());
        bold = new LocalResourceManager(JFaceResources.getResources(), owner)
                .create(FontDescriptor.createFrom(owner.getFont()).setStyle(SWT.BOLD));
        owner.addDisposeListener(event -> layout.dispose());
    }

    /**
     * Words to draw.
     *
     * @param text on one line
     * @param marks places that stand out
     */
    record Words(String text, List<Mark> marks) {

        Words from(int start) {
            var kept = marks.stream().filter(mark -> mark.start() >= start)
                    .map(mark -> new Mark(mark.start() - start + 1, mark.end() - start + 1)).toList();
            return new Words(CUT + text.substring(start), kept);
        }

        Words to(int end) {
            var kept = marks.stream().filter(mark -> mark.start() < end)
                    .map(mark -> new Mark(mark.start(), Math.min(mark.end(), end))).toList();
            return new Words(text.substring(0, end).stripTrailing() + CUT, kept);
        }
    }

    /** Draws words in the context's colour; in a selected row marks stand out by their letters alone. */
    void draw(GC gc, Words words, int x, int y, int width, boolean selected) {
        if (width <= 0 || words.text().isEmpty()) {
            return;
        }
        set(cut(words, width), selected);
        layout.draw(gc, x, y);
    }

    private Words cut(Words words, int width) {
        set(words, true);
        if (layout.getBounds().width <= width) {
            return words;
        }
        var begun = words;
        int visible = layout.getOffset(width, 0, null);
        if (!words.marks().isEmpty() && words.marks().get(0).end() >= visible) {
            begun = words.from(start(words, (int) (visible * BEFORE_MARK)));
            set(begun, true);
        }
        if (layout.getBounds().width <= width) {
            return begun;
        }
        int room = Math.max(0, width - layout.getBounds(0, 0).width * 2);
        return begun.to(Math.max(1, layout.getOffset(room, 0, null) - 1));
    }

    private static int start(Words words, int before) {
        int wanted = Math.max(0, words.marks().get(0).start() - before);
        int blank = words.text().indexOf(' ', wanted);
        return blank < 0 || blank >= words.marks().get(0).start() ? wanted : blank + 1;
    }

    private void set(Words words, boolean selected) {
        layout.setText(words.text());
        var style = new TextStyle(bold, selected ? null : palette.color("MARK_WORDS"),
                selected ? null : palette.color("MARK"));
        for (var mark : words.marks()) {
            if (mark.start() >= 0 && mark.start() < mark.end() && mark.end() <= words.text().length()) {
                layout.setStyle(style, mark.start(), mark.end() - 1);
            }
        }
    }
}
