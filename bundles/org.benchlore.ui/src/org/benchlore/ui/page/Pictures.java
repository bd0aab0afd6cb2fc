// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.benchlore.ui.page.text.PageText;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;

/** Pictures of a page, drawn where the text has a place for them, never wider than the page. */
final class Pictures {

    private static final int EMPTY = 24;

    private final StyledText text;
    private final Map<String, Image> images = new HashMap<>();
    private Map<Integer, String> places = Map.of();

    Pictures(StyledText text) {
        this.text = text;
        text.addPaintObjectListener(event -> draw(event.gc, event.style, event.x, event.y));
        text.addDisposeListener(event -> forget());
    }

    void use(Map<String, ImageData> data) {
        forget();
        data.forEach((file, one) -> images.put(file, new Image(text.getDisplay(), one)));
    }

    private void forget() {
        images.values().forEach(Image::dispose);
        images.clear();
    }

    /** Makes room in the text for each picture. */
    void place(PageText page, int width) {
        places = new HashMap<>();
        for (var place : page.pictures()) {
            places.put(place.offset(), place.file());
            var range = new StyleRange(place.offset(), 1, null, null);
            var image = image(place.offset());
            int wide = image.map(one -> Math.min(width, one.getBounds().width)).orElse(EMPTY);
            int high = image.map(one -> one.getBounds().height * wide / one.getBounds().width).orElse(EMPTY);
            range.metrics = new GlyphMetrics(high, 0, wide);
            text.setStyleRange(range);
        }
    }

    private Optional<Image> image(int offset) {
        return Optional.ofNullable(places.get(offset)).map(images::get);
    }

    private void draw(org.eclipse.swt.graphics.GC gc, StyleRange style, int x, int y) {
        var image = image(style.start);
        gc.setInterpolation(SWT.HIGH);
        if (image.isPresent()) {
            var size = image.get().getBounds();
            gc.drawImage(image.get(), 0, 0, size.width, size.height, x, y, style.metrics.width, style.metrics.ascent);
        } else {
            gc.drawRectangle(x, y, EMPTY - 2, EMPTY - 2);
            gc.drawLine(x, y, x + EMPTY - 2, y + EMPTY - 2);
        }
    }
}
