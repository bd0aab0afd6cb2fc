// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

/**
 * Shows a page as plain text for a terminal. Links are followed by an id in brackets that {@code show} takes; an
 * element within a file is named by the file's id.
 */
public final class TextRenderer {

    /** The narrowest width, in characters, that is set properly. */
    public static final int NARROWEST = 24;

    private final int width;

    /**
     * Renders for a width.
     *
     * @param width longest line in characters; less than {@link #NARROWEST} is taken as that
     */
    public TextRenderer(int width) {
        this.width = Math.max(width, NARROWEST);
    }

    /**
     * Renders a page.
     *
     * @param page a page
     * @return lines with line feeds, none at the end and no blanks at the end of a line
     */
    public String render(Page page) {
        var blocks = new TextBlocks(width);
        var text = new StringBuilder();
        for (var block : page.blocks()) {
            boolean tight = blocks.isTight(block);
            if (text.length() > 0 && !tight) {
                text.append('\n');
            }
            blocks.visit(block).forEach(line -> text.append(line.stripTrailing()).append('\n'));
        }
        return text.toString().stripTrailing();
    }
}
