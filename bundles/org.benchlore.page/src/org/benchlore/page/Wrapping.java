// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines at blanks; words longer than a line are cut. Widths are counted in code points. */
final class Wrapping {

    private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}\\u202A-\\u202E\\u2066-\\u2069&&[^\\n]]");

    /** A figure is not parted from its unit. */
    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=[0-9]) (?=(?:N·m|N|kN|mm|cm|m|µm|km|bar|kPa|MPa"
            + "|kg|g|ml|l|min|s|h|V|A|°C?|%)(?!\\p{L}))");
    private static final String GLUE = "\u0000";

    private Wrapping() {
    }

    static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }

    /** Makes text harmless for a terminal: what somebody else wrote must not steer it. */
    static String clean(String text) {
        return CONTROLS.matcher(text.replace("\r\n", "\n").replace('\r', '\n').replace('\t', ' ')).replaceAll("");
    }

    /** Returns at least one line, each of at most the width; line breaks in the text are kept. */
    static List<String> wrap(String text, int width) {
        var lines = new ArrayList<String>();
        for (var line : clean(text).split("\n", -1)) {
            wrapLine(line, Math.max(1, width), lines);
        }
        return lines;
    }

    private static void wrapLine(String text, int width, List<String> lines) {
        var line = new StringBuilder();
        for (var word : words(text)) {
            if (line.length() > 0 && width(line.toString()) + 1 + width(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
            cut(line, width, lines);
        }
        lines.add(line.toString());
    }

    static String[] words(String text) {
        var words = BEFORE_UNIT.matcher(text.trim()).replaceAll(GLUE).split(" +");
        return Arrays.stream(words).map(word -> word.replace(GLUE, " ")).toArray(String[]::new);
    }

    private static void cut(StringBuilder line, int width, List<String> lines) {
        while (width(line.toString()) > width) {
            int end = line.offsetByCodePoints(0, width);
            lines.add(line.substring(0, end));
            line.delete(0, end);
        }
    }

    /** Returns lines of which the first begins with a mark and the others are set in as far. */
    static List<String> hanging(String mark, String text, int width) {
        var lines = new ArrayList<String>();
        for (var line : wrap(text, width - width(mark))) {
            lines.add(lines.isEmpty() ? mark + line : " ".repeat(width(mark)) + line);
        }
        return lines;
    }
}
