// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.benchlore.page.Span;

/** A cell's words broken into lines that fit a column. */
final class Cell {

    private final Ruler ruler;
    private final Style plain;
    private final List<List<Span>> lines = new ArrayList<>();
    private int used;

    private Cell(Ruler ruler, Style plain) {
        this.ruler = ruler;
        this.plain = plain;
        lines.add(new ArrayList<>());
    }

    static List<List<Span>> broken(List<Span> spans, int width, Ruler ruler, Style plain) {
        var cell = new Cell(ruler, plain);
        for (var span : spans) {
            cell.add(span, width);
        }
        return cell.lines;
    }

    /** Returns the width of the longest word and of the longest line. */
    static int[] widths(List<Span> spans, Ruler ruler, Style style) {
        var plain = spans.stream().anyMatch(Cell::isStrong) ? Style.STRONG : style;
        int word = 0;
        int line = 0;
        for (var part : text(spans).split("\n")) {
            line = Math.max(line, ruler.width(part, plain));
            for (var one : part.split(" ")) {
                word = Math.max(word, ruler.width(one, plain));
            }
        }
        return new int[] {word, line};
    }

    private static boolean isStrong(Span span) {
        return span instanceof Span.Words words && words.strong();
    }

    private static String text(List<Span> spans) {
        var text = new StringBuilder();
        spans.forEach(span -> text.append(span.text()));
        return text.toString();
    }

    private void add(Span span, int width) {
        if (span instanceof Span.Link link) {
            add(link.text().replace('\n', ' '), width, text -> new Span.Link(text, link.target()), Style.LINK);
        } else if (span instanceof Span.Words words) {
            var parts = words.text().split("\n", -1);
            for (int i = 0; i < parts.length; i++) {
                if (i > 0) {
                    newLine();
                }
                add(parts[i], width, text -> new Span.Words(text, words.strong()), words.strong() ? Style.STRONG : plain);
            }
        }
    }

    private void add(String words, int width, Function<String, Span> maker, Style style) {
        var piece = new StringBuilder();
        for (var word : words.split("(?<= )")) {
            int wide = ruler.width(word.stripTrailing(), style);
            if (used > 0 && used + wide > width) {
                piece.setLength(piece.toString().stripTrailing().length());
                put(piece, maker);
                newLine();
            }
            piece.append(breakUp(word, width, maker, style));
            used += ruler.width(word, style);
        }
        put(piece, maker);
    }

    /** A word that is wider than its column is broken anywhere; what is left of it goes on. */
    private String breakUp(String word, int width, Function<String, Span> maker, Style style) {
        var rest = word;
        while (rest.length() > 1 && used == 0 && ruler.width(rest.stripTrailing(), style) > width) {
            int fits = rest.length() - 1;
            while (fits > 1 && ruler.width(rest.substring(0, fits), style) > width) {
                fits--;
            }
            lines.get(lines.size() - 1).add(maker.apply(rest.substring(0, fits)));
            newLine();
            rest = rest.substring(fits);
        }
        return rest;
    }

    private void put(StringBuilder piece, Function<String, Span> maker) {
        if (piece.length() > 0) {
            lines.get(lines.size() - 1).add(maker.apply(piece.toString()));
            piece.setLength(0);
        }
    }

    private void newLine() {
        lines.add(new ArrayList<>());
        used = 0;
    }
}
