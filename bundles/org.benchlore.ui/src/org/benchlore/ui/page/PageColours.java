// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import org.benchlore.ui.look.Palette;
import org.benchlore.ui.page.text.Fill;
import org.benchlore.ui.page.text.Style;
import org.eclipse.swt.graphics.Color;

/**
 * Colours of a page. Those of hazard panels never follow the theme: red, orange, yellow and blue after the safety
 * colours of ISO 3864-4 as a screen can show them (values chosen by eye), letters black or white as ISO 3864-2 has it.
 */
final class PageColours {

    private static final Color BLACK = new Color(0, 0, 0);
    private static final Color WHITE = new Color(255, 255, 255);
    private static final Color SAFETY_RED = new Color(168, 25, 31);
    private static final Color SAFETY_ORANGE = new Color(240, 127, 30);
    private static final Color SAFETY_YELLOW = new Color(249, 178, 0);
    private static final Color SAFETY_BLUE = new Color(0, 83, 138);

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
