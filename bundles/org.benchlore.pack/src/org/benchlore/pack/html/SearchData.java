// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.TopElement;
import org.benchlore.page.Labels;
import org.benchlore.page.Page;
import org.benchlore.page.TextRenderer;
import org.benchlore.store.Row;

/**
 * What the search of a pack knows: a script that names every page with its words. A page that was opened as a file may not
 * fetch other files, but it may load scripts that lie beside it.
 */
final class SearchData {

    /** Wide enough that few lines are broken; boxes are padded to it, so that much wider is slow. */
    private static final int WIDE = 200;
    private static final Pattern LAYOUT = Pattern.compile("[\\s\u2500-\u257F—=_-]{3,}|[\\s\u2500-\u257F]+");

    private final StringBuilder script = new StringBuilder("window.benchlorePages = [\n");
    private boolean isFirst = true;

    void add(Row row, TopElement element, Page page) {
        var marks = Stream.of(row.codes(), row.numbers(), row.symptoms()).flatMap(java.util.Collection::stream)
                .collect(Collectors.joining(" "));
        script.append(isFirst ? "" : ",\n").append("{id:").append(Html.script(row.id())).append(",title:").append(Html.script(page.title()))
                .append(",kind:").append(Html.script(Labels.capital(Labels.of(row.kind())))).append(",mark:")
                .append(Html.script(ElementPages.mark(element))).append(",marks:").append(Html.script(marks)).append(",text:")
                .append(Html.script(text(page))).append('}');
        isFirst = false;
    }

    /** The words of the page without the banners, which every page has. */
    private static String text(Page page) {
        var blocks = page.blocks().stream().filter(block -> !(block instanceof org.benchlore.page.Block.Banner)).skip(1).toList();
        return LAYOUT.matcher(new TextRenderer(WIDE).render(new Page(page.title(), blocks))).replaceAll(" ").strip();
    }

    String script() {
        return script + "\n];\n";
    }
}
