// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.benchlore.model.TopElement;

/** Part, tool and serial numbers, of which people type any piece, with separators of their own or none. */
final class Numbers {

    /** Shorter pieces fit too much. */
    static final int SHORTEST_PIECE = 3;
    private static final int LONGEST = 40;
    private static final List<String> FEATURES = List.of("number", "serial");

    private Numbers() {
    }

    /** Returns the form of a number without separators. */
    static String form(String number) {
        var form = new StringBuilder();
        number.toLowerCase(Locale.ROOT).codePoints().filter(Character::isLetterOrDigit).limit(LONGEST)
                .forEach(form::appendCodePoint);
        return form.toString();
    }

    /** Returns the numbers of an element from every character on, so that a piece is the beginning of one of them. */
    static Set<String> of(TopElement top) {
        var pieces = new LinkedHashSet<String>();
        for (var name : FEATURES) {
            var feature = top.eClass().getEStructuralFeature(name);
            if (feature != null && top.eGet(feature) instanceof String number) {
                var form = form(number);
                for (int i = 0; i + SHORTEST_PIECE <= form.length(); i++) {
                    pieces.add(form.substring(i));
                }
            }
        }
        return pieces;
    }
}
