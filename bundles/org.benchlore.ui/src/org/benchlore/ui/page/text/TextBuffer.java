// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.page.Span;
import org.benchlore.page.drawing.Drawing;

/** Collects a page's text line by line. */
final class TextBuffer {

    private static final char PICTURE = '\uFFFC';

    private final StringBuilder text = new StringBuilder();
    private final List<PageText.Run> runs = new ArrayList<>();
    private final List<PageText.LinkPlace> links = new ArrayList<>();
    private final List<PageText.Line> lines = new ArrayList<>();
    private final List<PageText.Panel> panels = new ArrayList<>();
    private final List<PageText.PicturePlace> pictures = new ArrayList<>();

    /** Begins a line; the words that are added next stand in it. */
    int line(PageText.Line look) {
        if (!lines.isEmpty()) {
            text.append('\n');
        }
        lines.add(look);
        return lines.size() - 1;
    }

    /** Adds words to the line; a line feed in them goes on in a new line of the same look. */
    void words(String words, Style style) {
        var parts = words.split("\n", -1);
        for (int i = 0; i < parts.length; i++) {
            if (i > 0) {
                line(goingOn(lines.get(lines.size() - 1)));
            }
            run(parts[i], style);
        }
    }

    private static PageText.Line goingOn(PageText.Line line) {
        return new PageText.Line(line.fill(), line.wrapIndent(), line.wrapIndent(), 0, line.ruled(), line.tabs());
    }

    private void run(String words, Style style) {
        if (!words.isEmpty()) {
            runs.add(new PageText.Run(text.length(), words.length(), style));
            text.append(words);
        }
    }

    void link(String words, Address target) {
        var line = words.replace('\n', ' ');
        links.add(new PageText.LinkPlace(text.length(), line.length(), target));
        run(line, Style.LINK);
    }

    void spans(List<Span> spans, Style plain) {
        for (var span : spans) {
            if (span instanceof Span.Link link) {
                link(link.text(), link.target());
            } else if (span instanceof Span.Words some) {
                words(some.text(), some.strong() && plain == Style.BODY ? Style.STRONG : plain);
            }
        }
    }

    void tab() {
        text.append('\t');
    }

    void picture(String file) {
        pictures.add(new PageText.PicturePlace(text.length(), file, Optional.empty()));
        text.append(PICTURE);
    }

    void drawing(Drawing drawing) {
        pictures.add(new PageText.PicturePlace(text.length(), "", Optional.of(drawing)));
        text.append(PICTURE);
    }

    void panel(int first, int last) {
        panels.add(new PageText.Panel(first, last));
    }

    int lastLine() {
        return lines.size() - 1;
    }

    PageText done() {
        return new PageText(text.toString(), List.copyOf(runs), List.copyOf(links), List.copyOf(lines),
                List.copyOf(panels), List.copyOf(pictures));
    }
}
