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

    GcRuler(Control control, PageFonts fonts, int pageWidth) {
        this.gc = new GC(control);
        this.fonts = fonts;
        this.pageWidth = pageWidth;
        gc.setFont(fonts.get(Style.BODY));
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
