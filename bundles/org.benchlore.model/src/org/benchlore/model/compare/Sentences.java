// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

import org.benchlore.model.TopElement;

/**
 * Says in sentences how two versions of an element differ:
 * {@code tightening torque of fastening drain plug, step 3, from 40 to 45 N·m}.
 */
public final class Sentences {

    private static final String MARK = "\u001f";
    private static final int LONGEST = 60;
    private static final String OF = " of ";
    private static final Map<String, String> AGAIN = Map.of("reviewed hash", "the sum of the reviewed text");

    private Sentences() {
    }

    /**
     * Compares two versions.
     *
     * @param before the earlier version
     * @param after the later version
     * @param words says places and values
     * @return one sentence a difference, without a full stop, in the order of the later version; empty if they are alike
     */
    public static List<String> between(TopElement before, TopElement after, Words words) {
        return Differences.between(before, after, words.marked(MARK)).stream().map(Sentences::of).toList();
    }

    private static String of(Difference difference) {
        var parts = new ArrayList<>(List.of(difference.place().split(MARK)));
        Collections.reverse(parts);
        parts.set(0, AGAIN.getOrDefault(parts.get(0), parts.get(0)));
        var place = parts.size() == 1 ? parts.get(0) : parts.get(0) + OF + String.join(", ", parts.subList(1, parts.size()));
        return switch (difference.change()) {
            case ADDED -> place + " added: " + shown(difference.after());
            case REMOVED -> place + " removed: " + shown(difference.before());
            case MOVED -> place + " moved from " + outer(difference.before()) + " to " + outer(difference.after());
            case CHANGED -> place + (parts.size() > 1 ? "," : "") + changed(difference.before(), difference.after());
        };
    }

    /** Where a moved element stands now is said already; of its place before only what is around it is said. */
    private static String outer(String place) {
        int last = place.lastIndexOf(MARK);
        var outer = last < 0 ? place : place.substring(0, last);
        return outer.replace(MARK, ", ");
    }

    /** A unit that stays is said once; of long texts only what differs is shown. */
    private static String changed(String before, String after) {
        int blank = before.lastIndexOf(' ');
        if (blank > 0 && before.matches("[0-9.,]+ \\S+") && after.matches("[0-9.,]+ \\S+")
                && after.endsWith(before.substring(blank))) {
            return " from " + before.substring(0, blank) + " to " + after;
        }
        if (before.length() <= LONGEST && after.length() <= LONGEST && before.indexOf('\n') < 0 && after.indexOf('\n') < 0) {
            return " from " + quoted(before) + " to " + quoted(after);
        }
        int same = wordStart(before, common(before, after));
        int end = Math.min(commonEnd(before, after), Math.min(before.length(), after.length()) - same);
        return " from '" + shown(cut(before, same, end)) + "' to '" + shown(cut(after, same, end)) + "'";
    }

    private static String quoted(String value) {
        return value.indexOf(' ') < 0 || value.matches("[0-9.,]+ \\S+") ? value : "'" + value + "'";
    }

    private static int common(String one, String other) {
        int i = 0;
        while (i < Math.min(one.length(), other.length()) && one.charAt(i) == other.charAt(i)) {
            i++;
        }
        return i;
    }

    private static int commonEnd(String one, String other) {
        return wordEnd(one, common(new StringBuilder(one).reverse().toString(), new StringBuilder(other).reverse().toString()));
    }

    /** Back to the beginning of the word, so that no word is torn. */
    private static int wordStart(String text, int at) {
        int start = at;
        while (start > 0 && !Character.isWhitespace(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static int wordEnd(String text, int length) {
        int left = length;
        while (left > 0 && !Character.isWhitespace(text.charAt(text.length() - left))) {
            left--;
        }
        return left;
    }

    private static String cut(String text, int start, int end) {
        var cut = text.substring(start, Math.max(start, text.length() - end)).strip();
        return (start > 0 ? "…" : "") + cut + (end > 0 ? "…" : "");
    }

    private static String shown(String value) {
        var line = value.replaceAll("\\s+", " ").strip();
        return line.length() <= 2 * LONGEST ? line : line.substring(0, 2 * LONGEST) + "…";
    }
}
