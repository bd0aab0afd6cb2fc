// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.Optional;
import java.util.function.Function;

import org.benchlore.model.Address;

/**
 * Shows a page as one HTML file that stands alone: no script, nothing fetched, readable in light, in dark and on
 * paper. Everything from the library is escaped.
 */
public final class HtmlRenderer {

    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>%s</title>
            <style>
            %s</style>
            </head>
            <body>
            <main>
            """;

    private static final String FOOT = """
            </main>
            </body>
            </html>
            """;

    private final Function<Address, Optional<String>> addresses;
    private final Function<String, Optional<String>> pictures;

    /** Renders links and pictures as words, since a single file has nowhere to lead. */
    public HtmlRenderer() {
        this(target -> Optional.empty(), file -> Optional.empty());
    }

    /**
     * Renders pages that lie beside others.
     *
     * @param addresses gives the relative address of an element's page, empty to show words only
     * @param pictures gives the relative address of a file of the library's media, empty to show its caption only
     */
    public HtmlRenderer(Function<Address, Optional<String>> addresses, Function<String, Optional<String>> pictures) {
        this.addresses = addresses;
        this.pictures = pictures;
    }

    /**
     * Renders a page.
     *
     * @param page a page
     * @return an HTML 5 document with line feeds
     */
    public String render(Page page) {
        return render(page, HtmlStyle.CSS);
    }

    /**
     * Renders a page so close that a sheet fits on one page of A4.
     *
     * @param page a page
     * @return an HTML 5 document with line feeds
     */
    public String renderOnePage(Page page) {
        return render(page, HtmlStyle.CSS + HtmlStyle.ONE_PAGE);
    }

    /**
     * Renders one block, for whoever puts pages of an own making together.
     *
     * @param block a block
     * @return an HTML element
     */
    public String block(Block block) {
        return new HtmlBlocks(addresses, pictures).visit(block);
    }

    /**
     * Returns the style that such pages need.
     *
     * @return a style sheet for light, dark and paper
     */
    public static String style() {
        return HtmlStyle.CSS;
    }

    private String render(Page page, String style) {
        var html = new StringBuilder(HEAD.formatted(Escape.html(page.title()), style + foot(page)));
        var blocks = new HtmlBlocks(addresses, pictures);
        page.blocks().forEach(block -> html.append(blocks.visit(block)).append('\n'));
        return html.append(FOOT).toString();
    }

    private static String foot(Page page) {
        var isInvented = page.blocks().stream().anyMatch(block -> block instanceof Block.Banner banner
                && banner.tone() == Block.Tone.INVENTED);
        return isInvented ? HtmlStyle.INVENTED_FOOT : "";
    }
}
