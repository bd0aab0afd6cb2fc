// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.page.Block.Pair;

/** Collects labels with values; a value that is not there leaves no label behind. */
final class Facts {

    private final List<Pair> pairs = new ArrayList<>();

    Facts add(String label, List<Span> value) {
        if (!value.isEmpty()) {
            pairs.add(new Pair(label, value));
        }
        return this;
    }

    Facts add(String label, Object value) {
        return add(label, Spans.of(value));
    }

    /** Adds a fact that matters when it is missing. */
    Facts always(String label, Object value) {
        var spans = Spans.of(value);
        return add(label, spans.isEmpty() ? Spans.of(Texts.NOT_RECORDED) : spans);
    }

    List<Pair> pairs() {
        return List.copyOf(pairs);
    }
}
