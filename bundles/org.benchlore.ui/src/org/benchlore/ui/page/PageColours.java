// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import org.benchlore.ui.look.Palette;
import org.benchlore.ui.page.text.Fill;
import org.benchlore.ui.page.text.Style;
import org.eclipse.swt.graphics.Color;

/**
 * Colours of a page. Those of hazard panels never follow the theme: red RAL 3001, orange RAL 2010, yellow RAL 1003 and
 * blue RAL 5005 with black or white letters, ISO 3864-2:2016 as published copies give it; the HTML pages have the same.
 */
final class PageColours {

    private static final Color BLACK = new Color(0, 0, 0);
    private static final Color WHITE = new Color(255, 255, 255);
    private static final Color SAFETY_RED = new Color(0x9b, 0x24, 0x23);
    private static final Color SAFETY_ORANGE = new Color(0xd0, 0x5d, 0x29);
    private static final Color SAFETY_YELLOW = new Color(0xf9, 0xa8, 0x00);
    private static final Color SAFETY_BLUE = new Color(0x00, 0x53, 0x87);

    private final Palette palette;

    PageColours(Palette palette) {
        this.palette = palette;
    }

    /** Returns the colour of the words, or null for the page's own. */
    Color words(Style style, Fill fill) {
        return switch (style) {
            case TITLE, HEADING, SUBHEADING -> palette.color("HEADING");
            case LABEL, CAPTION -> palette.color("LABEL");
            case LINK -> palette.color("LINK");
            case SIGNAL, SIGN -> fill == Fill.DANGER || fill == Fill.NOTICE ? WHITE : BLACK;
            case HAZARD -> BLACK;
            case BANNER -> palette.color(fill + "_WORDS");
            case BODY, STRONG, HEAD -> null;
        };
    }

    /** Returns the colour behind a line, or null for the page's own. */
    Color behind(Fill fill) {
        return switch (fill) {
            case NONE -> null;
            case DANGER -> SAFETY_RED;
            case WARNING -> SAFETY_ORANGE;
            case CAUTION -> SAFETY_YELLOW;
            case NOTICE -> SAFETY_BLUE;
            case HAZARD_WORDS -> WHITE;
            case INVENTED, STOP, ATTENTION, STANDING_CAUTION, TABLE_HEAD -> palette.color(fill.name());
        };
    }

    Color rule() {
        return palette.color("RULE");
    }
}
