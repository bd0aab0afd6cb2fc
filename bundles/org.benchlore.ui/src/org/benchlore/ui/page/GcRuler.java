// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.HashMap;
import java.util.Map;

import org.benchlore.ui.page.text.Ruler;
import org.benchlore.ui.page.text.Style;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;

/** Measures with a control's fonts; to be closed after one layout. */
final class GcRuler implements Ruler, AutoCloseable {

    private record Measured(String words, Style style) {
    }

    private final GC gc;
    private final PageFonts fonts;
    private final int pageWidth;
    private final int room;
    private final Map<Measured, Integer> known = new HashMap<>();

    /** Makes a ruler for the room that there is, but for no more than so many characters in a line. */
    GcRuler(Control control, PageFonts fonts, int room, int mostCharacters) {
        this.gc = new GC(control);
        this.fonts = fonts;
        gc.setFont(fonts.get(Style.BODY));
        this.pageWidth = Math.min(room, (int) (gc.getFontMetrics().getAverageCharacterWidth() * mostCharacters));
        this.room = Math.max(4, gc.getFontMetrics().getHeight() / 2);
    }

    @Override
    public int width(String words, Style style) {
        return known.computeIfAbsent(new Measured(words, style), this::measure);
    }

    private int measure(Measured what) {
        gc.setFont(fonts.get(what.style()));
        return gc.textExtent(what.words()).x;
    }

    @Override
    public int pageWidth() {
        return pageWidth;
    }

    @Override
    public int room() {
        return room;
    }

    @Override
    public void close() {
        gc.dispose();
    }
}
