// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Puts runs of text together. A text that is not there is an empty list, so that its place can be left out. */
final class Spans {

    private Spans() {
    }

    /** Returns a value's words, an empty list for null and for blank text. */
    static List<Span> of(Object value) {
        var text = value == null ? "" : value.toString();
        return text.isBlank() ? List.of() : List.of(Span.of(text));
    }

    /** Returns words before a value, an empty list if there is no value. */
    static List<Span> of(String before, Object value) {
        var text = value == null ? "" : value.toString();
        return text.isBlank() ? List.of() : List.of(Span.of(before + text));
    }

    /** Returns words before other runs, an empty list if there are none. */
    static List<Span> before(String words, List<Span> rest) {
        return rest.isEmpty() ? List.of() : concat(List.of(Span.of(words)), rest);
    }

    @SafeVarargs
    @SuppressWarnings("varargs")
    static List<Span> concat(List<Span>... parts) {
        return join("", List.of(parts));
    }

    /** Puts runs in one line, leaving out the empty ones. */
    static List<Span> join(String separator, Collection<List<Span>> parts) {
        var line = new ArrayList<Span>();
        for (var part : parts) {
            if (!part.isEmpty() && !line.isEmpty() && !separator.isEmpty()) {
                line.add(Span.of(separator));
            }
            line.addAll(part);
        }
        return List.copyOf(line);
    }

    static List<Span> words(Collection<String> texts) {
        return of(texts.stream().filter(text -> !text.isBlank()).collect(Collectors.joining(", ")));
    }

    static String text(List<Span> spans) {
        return spans.stream().map(Span::text).collect(Collectors.joining());
    }

    /** Returns 'x to y', 'from x' or 'up to y', an empty text if neither is known. */
    static String range(Object from, Object to) {
        if (from == null || to == null) {
            return from == null && to == null ? "" : from == null ? "up to " + to : "from " + from;
        }
        return from + " to " + to;
    }
}
