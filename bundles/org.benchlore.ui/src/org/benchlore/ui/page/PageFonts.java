// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.util.EnumMap;
import java.util.Map;

import org.benchlore.ui.page.text.Style;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Control;

/** Fonts of a page at a certain size, given back with the control. */
final class PageFonts {

    private static final float LARGER_THAN_DIALOGS = 1.06f;
    private static final float PERCENT = 100f;

    private final LocalResourceManager resources;
    private final Map<Style, Font> fonts = new EnumMap<>(Style.class);

    PageFonts(Control owner, int zoom) {
        resources = new LocalResourceManager(JFaceResources.getResources(), owner);
        float size = JFaceResources.getDialogFont().getFontData()[0].height * LARGER_THAN_DIALOGS * zoom / PERCENT;
        for (var style : Style.values()) {
            fonts.put(style, font(size, style));
        }
    }

    private Font font(float size, Style style) {
        float factor = switch (style) {
            case TITLE -> 1.7f;
            case HEADING -> 1.3f;
            case SUBHEADING, SIGNAL, SIGN -> 1.12f;
            default -> 1f;
        };
        int look = switch (style) {
            case TITLE, HEADING, SUBHEADING, STRONG, HEAD, SIGNAL, BANNER, SIGN -> SWT.BOLD;
            case CAPTION -> SWT.ITALIC;
            default -> SWT.NORMAL;
        };
        var data = JFaceResources.getDialogFont().getFontData()[0];
        return resources.create(FontDescriptor.createFrom(data).setHeight(Math.max(6, Math.round(size * factor)))
                .setStyle(look));
    }

    Font get(Style style) {
        return fonts.get(style);
    }

    void dispose() {
        resources.dispose();
    }
}
