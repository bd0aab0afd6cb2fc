// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

import org.benchlore.page.Labels;

/** What stands around every page of a pack: the way to the contents and the search, and what must be known of the page. */
final class Shell {

    private static final String FRAME = """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <meta name="referrer" content="no-referrer">
            <title>%1$s</title>
            <link rel="icon" href="data:,">
            <link rel="stylesheet" href="%2$sassets/page.css">
            <link rel="stylesheet" href="%2$sassets/pack.css">
            <style>
            @page { margin: 16mm 12mm 16mm; @top-left { content: "%3$s"; font: 8pt sans-serif; } @bottom-left { content: "%4$s"; font: bold 8pt sans-serif; } }
            </style>
            %9$s<script src="%2$sassets/pack.js" defer></script>
            </head>
            <body data-pack="%5$s" data-page="%6$s" data-title="%10$s">
            <a class="skip" href="#main">To the page itself</a>
            <header class="bar"><nav aria-label="Pack">
            <a href="%2$sindex.html">Contents</a>
            %7$s</nav></header>
            <main id="main">
            %8$s</main>
            <footer class="foot"><div>
            %11$s</div></footer>
            </body>
            </html>
            """;

    private final PackInfo info;
    private final boolean hasLearner;

    Shell(PackInfo info, boolean hasLearner) {
        this.info = info;
        this.hasLearner = hasLearner;
    }

    /**
     * A page as it is put together.
     *
     * @param id by which this device keeps what is written on it
     * @param title its title
     * @param revision such as 'Revision 3, reviewed 2026-02-16', or empty
     * @param mark such as 'DRAFT', or empty
     * @param up the way to the folder of the contents, such as {@code ../}
     * @param scripts further scripts
     * @param body its HTML
     */
    record Content(String id, String title, String revision, String mark, String up, String scripts, String body) {
    }

    String page(Content content) {
        var head = (content.mark().isEmpty() ? "" : content.mark() + " · ") + content.title()
                + (content.revision().isEmpty() ? "" : " · " + content.revision());
        return FRAME.formatted(Html.text(content.title()), content.up(), Html.style(head), Html.style(warning()),
                Html.text(info.shop()), Html.text(content.id()), links(content), content.body(), content.scripts(),
                Html.text(info.title()), foot(content));
    }

    private String links(Content content) {
        var learner = hasLearner ? "<a href=\"" + content.up() + "learn.html\">Learner's way</a>\n" : "";
        var search = content.up().isEmpty() ? "" : """
                <form role="search" action="%sindex.html" method="get"><label for="asked">Search the pack</label>\
                <input id="asked" name="q" type="search" placeholder="Search the pack"><button>Search</button></form>
                """.formatted(content.up());
        return learner + search;
    }

    private String warning() {
        return (info.isInvented() ? Labels.INVENTED : "Check for a newer one before you work.") + " Pack of " + info.made();
    }

    private String foot(Content content) {
        var lines = new StringBuilder();
        if (!content.mark().isEmpty()) {
            lines.append("<p><span class=\"mark\">").append(Html.text(content.mark())).append("</span></p>\n");
        }
        lines.append("<p>").append(content.revision().isEmpty() ? "" : Html.text(content.revision()) + ". ")
                .append("Pack '").append(Html.text(info.title())).append("' of ").append(info.made()).append(", made by ")
                .append(Html.text(info.shop())).append(". Printed <span class=\"printed\">on the day of the pack</span>.</p>\n")
                .append("<p><strong>Check for a newer one:</strong> this page does not change by itself. Ask ")
                .append(Html.text(info.shop())).append(" for the revision in force before you work from it.</p>\n");
        if (info.isInvented()) {
            lines.append("<p><strong>").append(Html.text(Labels.INVENTED)).append("</strong></p>\n");
        }
        return lines.toString();
    }
}
