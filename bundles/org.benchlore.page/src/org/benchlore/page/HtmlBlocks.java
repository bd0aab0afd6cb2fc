// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.benchlore.model.Signal;
import org.benchlore.page.Block.Banner;
import org.benchlore.page.Block.Bullets;
import org.benchlore.page.Block.Drawn;
import org.benchlore.page.Block.HazardPanel;
import org.benchlore.page.Block.Heading;
import org.benchlore.page.Block.Numbered;
import org.benchlore.page.Block.Pairs;
import org.benchlore.page.Block.Paragraph;
import org.benchlore.page.Block.Picture;
import org.benchlore.page.Block.Table;

/** Blocks as HTML elements. */
final class HtmlBlocks implements BlockVisitor<String> {

    private static final int DEEPEST_HEADING = 6;

    private final Function<Address, Optional<String>> addresses;
    private final Function<String, Optional<String>> pictures;

    HtmlBlocks(Function<Address, Optional<String>> addresses, Function<String, Optional<String>> pictures) {
        this.addresses = addresses;
        this.pictures = pictures;
    }

    @Override
    public String heading(Heading heading) {
        int level = Math.max(1, Math.min(heading.level(), DEEPEST_HEADING));
        return "<h" + level + ">" + Escape.html(heading.text()) + "</h" + level + ">";
    }

    @Override
    public String paragraph(Paragraph paragraph) {
        return "<p>" + spans(paragraph.spans()) + "</p>";
    }

    @Override
    public String banner(Banner banner) {
        var look = switch (banner.tone()) {
            case INVENTED -> "invented";
            case STOP -> "stop";
            case ATTENTION -> "attention";
            case CAUTION -> "caution-banner";
        };
        var word = switch (banner.tone()) {
            case STOP -> "STOP: ";
            case INVENTED, ATTENTION, CAUTION -> "";
        };
        return "<p class=\"banner " + look + "\">" + word + Escape.lines(banner.text()) + "</p>";
    }

    @Override
    public String hazard(HazardPanel hazard) {
        var look = hazard.signal() == null || hazard.signal() == Signal.NOT_RECORDED ? "hazard-unsorted"
                : hazard.signal().getLiteral().toLowerCase(Locale.ROOT);
        // The alert triangle warns of injury to people; NOTICE is about things and never carries it.
        var sign = hazard.signal() == Signal.NOTICE ? "" : "<span aria-hidden=\"true\">&#9888;</span> ";
        var signal = Labels.signal(hazard.signal());
        return "<section class=\"hazard " + look + "\" aria-label=\"" + signal + "\">\n<p class=\"signal\">" + sign
                + signal + "</p>\n" + line(hazard.kind(), true) + line(hazard.consequence(), false)
                + line(hazard.avoidance(), false) + "</section>";
    }

    private static String line(String text, boolean strong) {
        if (text.isBlank()) {
            return "";
        }
        return "<p>" + (strong ? "<strong>" + Escape.lines(text) + "</strong>" : Escape.lines(text)) + "</p>\n";
    }

    @Override
    public String pairs(Pairs pairs) {
        return pairs.pairs().stream().map(pair -> "<dt>" + Escape.html(pair.label()) + "</dt><dd>"
                + spans(pair.value()) + "</dd>\n").collect(Collectors.joining("", "<dl>\n", "</dl>"));
    }

    @Override
    public String table(Table table) {
        var head = table.header().stream().map(title -> "<th scope=\"col\">" + Escape.html(title) + "</th>")
                .collect(Collectors.joining());
        var body = table.rows().stream().map(row -> row.stream().map(cell -> "<td>" + spans(cell) + "</td>")
                .collect(Collectors.joining("", "<tr>", "</tr>\n"))).collect(Collectors.joining());
        return "<div class=\"wide\"><table>\n<caption>" + Escape.html(table.caption()) + "</caption>\n<thead><tr>"
                + head + "</tr></thead>\n<tbody>\n" + body + "</tbody>\n</table></div>";
    }

    @Override
    public String bullets(Bullets bullets) {
        var html = new StringBuilder("<ul>");
        int level = 0;
        boolean first = true;
        for (var item : bullets.items()) {
            int next = Math.min(Indent.level(item), first ? 0 : level + 1);
            html.append(between(level, next, first)).append("<li>").append(spans(Indent.without(item)));
            level = next;
            first = false;
        }
        return html.append(first ? "" : "</li>").append("</ul></li>".repeat(level)).append("\n</ul>").toString();
    }

    /** Returns what closes the item before and opens or closes lists on the way to the next level. */
    private static String between(int level, int next, boolean first) {
        if (first) {
            return "\n";
        }
        return next > level ? "<ul>\n" : "</li>" + "</ul></li>".repeat(level - next) + "\n";
    }

    @Override
    public String numbered(Numbered step) {
        var label = step.label().isEmpty() ? "" : "<strong>" + Escape.html(step.label()) + ":</strong> ";
        var sign = step.signOff() ? "\n<span class=\"sign\">Signed: ____________ Date: ____________</span>" : "";
        return "<p class=\"step\"><span class=\"number\">" + Escape.html(step.number()) + ".</span>" + label
                + spans(step.text()) + sign + "</p>";
    }

    @Override
    public String picture(Picture picture) {
        var caption = picture.caption().isBlank() ? picture.file() : picture.caption();
        var image = pictures.apply(picture.file()).map(address -> "<img src=\"" + Escape.html(address) + "\" alt=\""
                + Escape.html(caption) + "\">").orElse("");
        return "<figure>" + image + "<figcaption>" + Escape.lines(caption) + "</figcaption></figure>";
    }

    @Override
    public String drawn(Drawn drawn) {
        return "<figure>" + drawn.drawing().svgElement() + "<figcaption>" + Escape.lines(drawn.drawing().title())
                + "</figcaption></figure>";
    }

    private String spans(List<Span> spans) {
        return spans.stream().map(this::span).collect(Collectors.joining());
    }

    private String span(Span span) {
        var text = Escape.lines(span.text());
        if (span instanceof Span.Link link) {
            return addresses.apply(link.target()).map(address -> "<a href=\"" + Escape.html(address) + "\">" + text
                    + "</a>").orElseGet(() -> "<span class=\"element\" title=\""
                            + Escape.html(link.target().toString()) + "\">" + text + "</span>");
        }
        return ((Span.Words) span).strong() ? "<strong>" + text + "</strong>" : text;
    }
}
