// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.benchlore.ui.page.text.PageText;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;

/** Pictures of a page, drawn where the text has a place for them, never wider than the page. */
final class Pictures {

    private static final int EMPTY = 24;

    private final StyledText text;
    private final Map<String, Image> images = new HashMap<>();
    private Map<Integer, PageText.PicturePlace> places = Map.of();

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

    /** Makes room in the text for each picture and drawing. */
    void place(PageText page, int width) {
        places = new HashMap<>();
        for (var place : page.pictures()) {
            places.put(place.offset(), place);
            var size = size(place);
            var range = new StyleRange(place.offset(), 1, null, null);
            int wide = Math.min(width, size.x);
            range.metrics = new GlyphMetrics(size.y * wide / size.x, 0, wide);
            text.setStyleRange(range);
        }
    }

    private Point size(PageText.PicturePlace place) {
        return place.drawing().map(drawing -> new Point((int) drawing.width(), (int) drawing.height()))
                .or(() -> Optional.ofNullable(images.get(place.file())).map(image -> image.getBounds())
                        .map(bounds -> new Point(bounds.width, bounds.height))).orElse(new Point(EMPTY, EMPTY));
    }

    private void draw(GC gc, StyleRange style, int x, int y) {
        var place = places.get(style.start);
        if (place == null) {
            return;
        }
        if (place.drawing().isPresent()) {
            new DrawingPainter(gc, x, y, style.metrics.width / place.drawing().get().width()).paint(place.drawing().get());
            return;
        }
        gc.setInterpolation(SWT.HIGH);
        var image = images.get(place.file());
        if (image != null) {
            var size = image.getBounds();
            gc.drawImage(image, 0, 0, size.width, size.height, x, y, style.metrics.width, style.metrics.ascent);
        } else {
            gc.drawRectangle(x, y, EMPTY - 2, EMPTY - 2);
            gc.drawLine(x, y, x + EMPTY - 2, y + EMPTY - 2);
        }
    }
}
