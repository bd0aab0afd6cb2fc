// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.benchlore.edit.Clip;
import org.benchlore.model.compare.Words;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;

/**
 * Keeps the element that was copied last, until something else is copied in any program. Other programs see it as a
 * line of text. Used on the window's thread.
 */
public final class ClipBoard {

    private final Words words = new Words();
    private Optional<Clip> clip = Optional.empty();
    private String text = "";

    void put(Clip next) {
        var line = words.summary(next.content());
        text = line.isEmpty() ? words.label(next.content()) : line;
        clip = Optional.of(next);
        with(board -> {
            board.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
            return null;
        });
    }

    /** The copied element, if nothing was copied since. */
    Optional<Clip> clip() {
        return clip.filter(kept -> text.equals(contents()));
    }

    /** The lines of text that were copied in any program, without blank ones. */
    List<String> lines() {
        return contents().lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    private static String contents() {
        var found = with(board -> board.getContents(TextTransfer.getInstance()));
        return found instanceof String words ? words : "";
    }

    private static Object with(Function<Clipboard, Object> action) {
        var board = new Clipboard(Display.getCurrent());
        try {
            return action.apply(board);
        } finally {
            board.dispose();
        }
    }
}
