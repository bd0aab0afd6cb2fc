// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import java.util.List;

import org.benchlore.model.Signal;
import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.drawing.Drawing;
import org.benchlore.page.Span;

/** Lays out a page as one text. */
public final class PageWriter {

    private static final String ALERT = "⚠ ";
    private static final double MOST_FOR_LABELS = 0.34;

    private final Ruler ruler;
    private final TextBuffer out = new TextBuffer();
    private int stepIndent;

    /**
     * Makes a writer for one page.
     *
     * @param ruler measures words
     */
    public PageWriter(Ruler ruler) {
        this.ruler = ruler;
    }

    /**
     * Lays out a page.
     *
     * @param page the page
     * @return its text, with an empty line at its end
     */
    public PageText write(Page page) {
        page.blocks().forEach(this::block);
        plain(0, 0);
        return out.done();
    }

    private void block(Block block) {
        if (!(block instanceof Block.Bullets)) {
            stepIndent = 0;
        }
        if (block instanceof Block.Heading heading) {
            heading(heading);
        } else if (block instanceof Block.Paragraph paragraph) {
            plain(0, 1);
            out.spans(paragraph.spans(), Style.BODY);
        } else if (block instanceof Block.Banner banner) {
            banner(banner);
        } else if (block instanceof Block.HazardPanel hazard) {
            hazard(hazard);
        } else if (block instanceof Block.Pairs pairs) {
            pairs(pairs);
        } else if (block instanceof Block.Table table) {
            table(table);
        } else {
            item(block);
        }
    }

    private void item(Block block) {
        if (block instanceof Block.Bullets bullets) {
            bullets(bullets);
        } else if (block instanceof Block.Numbered step) {
            numbered(step);
        } else if (block instanceof Block.Picture picture) {
            picture(picture);
        } else if (block instanceof Block.Drawn drawn) {
            drawn(drawn.drawing());
        }
    }

    private void plain(int indent, int rooms) {
        out.line(new PageText.Line(Fill.NONE, indent, indent, rooms * ruler.room(), false, List.of()));
    }

    private void heading(Block.Heading heading) {
        plain(0, 2);
        out.words(heading.text(), switch (heading.level()) {
            case 1 -> Style.TITLE;
            case 2 -> Style.HEADING;
            default -> Style.SUBHEADING;
        });
    }

    private void banner(Block.Banner banner) {
        var fill = switch (banner.tone()) {
            case INVENTED -> Fill.INVENTED;
            case STOP -> Fill.STOP;
            case ATTENTION -> Fill.ATTENTION;
            case CAUTION -> Fill.STANDING_CAUTION;
        };
        out.line(new PageText.Line(fill, 0, 0, 2 * ruler.room(), false, List.of()));
        out.words(banner.text(), Style.BANNER);
    }

    /** ISO 3864-2 and ANSI Z535.6: the alert sign and signal word on their colour, NOTICE without the sign. */
    private void hazard(Block.HazardPanel hazard) {
        var fill = switch (hazard.signal()) {
            case DANGER -> Fill.DANGER;
            case WARNING -> Fill.WARNING;
            case CAUTION -> Fill.CAUTION;
            case NOTICE, NOT_RECORDED -> Fill.NOTICE;
        };
        int first = out.line(new PageText.Line(fill, 0, 0, 2 * ruler.room(), false, List.of()));
        if (fill != Fill.NOTICE) {
            out.words(ALERT, Style.SIGN);
        }
        out.words(signalWord(hazard.signal()) + (hazard.kind().isBlank() ? "" : "   " + hazard.kind()), Style.SIGNAL);
        hazardWords(hazard.consequence());
        hazardWords(hazard.avoidance());
        out.panel(first, out.lastLine());
    }

    private static String signalWord(Signal signal) {
        return signal == Signal.NOT_RECORDED ? Messages.hazardUnsorted : signal.getLiteral();
    }

    private void hazardWords(String words) {
        if (!words.isBlank()) {
            out.line(new PageText.Line(Fill.HAZARD_WORDS, 0, 0, 0, false, List.of()));
            out.words(words, Style.HAZARD);
        }
    }

    private void pairs(Block.Pairs pairs) {
        int widest = pairs.pairs().stream().mapToInt(pair -> ruler.width(pair.label(), Style.LABEL)).max().orElse(0);
        int tab = Math.min(widest, (int) (ruler.pageWidth() * MOST_FOR_LABELS)) + 3 * ruler.room();
        for (int i = 0; i < pairs.pairs().size(); i++) {
            var pair = pairs.pairs().get(i);
            out.line(new PageText.Line(Fill.NONE, 0, tab, i == 0 ? ruler.room() : 0, false, List.of(tab)));
            out.words(pair.label(), Style.LABEL);
            out.tab();
            out.spans(pair.value(), Style.BODY);
        }
    }

    private void table(Block.Table table) {
        if (!table.caption().isBlank()) {
            plain(0, 1);
            out.words(table.caption(), Style.CAPTION);
        }
        new TableWriter(ruler, out).write(table);
    }

    /** Bullets behind a step belong to it and stand under its words. */
    private void bullets(Block.Bullets bullets) {
        int indent = stepIndent + ruler.room();
        for (int i = 0; i < bullets.items().size(); i++) {
            hanging("•", indent, indent + 2 * ruler.room(), i == 0 ? 1 : 0);
            out.spans(bullets.items().get(i), Style.BODY);
        }
    }

    private void hanging(String head, int indent, int tab, int rooms) {
        out.line(new PageText.Line(Fill.NONE, indent, tab, rooms * ruler.room(), false, List.of(tab - indent)));
        out.words(head, Style.LABEL);
        out.tab();
    }

    private void numbered(Block.Numbered step) {
        int number = ruler.width(step.number() + "  ", Style.LABEL) + ruler.room();
        stepIndent = Math.max(5 * ruler.room(), number);
        hanging(step.number(), ruler.room(), stepIndent, 1);
        if (!step.label().isBlank()) {
            out.words(step.label() + "  ", Style.STRONG);
        }
        out.spans(step.text(), Style.BODY);
        if (step.signOff()) {
            out.spans(List.of(Span.of("   "), Span.strong("☐ " + Messages.signOff)), Style.BODY);
        }
    }

    private void picture(Block.Picture picture) {
        plain(0, 1);
        out.picture(picture.file());
        if (!picture.caption().isBlank()) {
            plain(0, 0);
            out.words(picture.caption(), Style.CAPTION);
        }
    }

    /** The drawing holds its own words; what it shows stands below for those who do not see it. */
    private void drawn(Drawing drawing) {
        plain(0, 1);
        out.drawing(drawing);
        plain(0, 0);
        out.words(drawing.title(), Style.CAPTION);
    }
}
