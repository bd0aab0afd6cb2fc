// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

import org.benchlore.measure.Wording;

/** Reads an order that somebody gives: place numbers with blanks, commas or arrows between them. */
final class OwnOrder {

    private static final String EXAMPLE = "1 3 2 4";
    private static final int LONGEST = 1200;

    private OwnOrder() {
    }

    static List<Integer> read(String text) {
        var trimmed = text == null ? "" : text.strip();
        if (trimmed.isEmpty() || trimmed.length() > LONGEST) {
            throw Wording.problem(trimmed, "is no order of places", EXAMPLE);
        }
        var order = new ArrayList<Integer>();
        for (var word : trimmed.split("\\s*(?:[,;\\s]|->|→)\\s*")) {
            if (!word.matches("[0-9]{1,3}")) {
                throw Wording.problem(word, "is no place number", EXAMPLE);
            }
            order.add(Integer.valueOf(word));
        }
        return check(order, order.size());
    }

    /** Returns the order if it names each place from 1 to the count once. */
    static List<Integer> check(List<Integer> order, int count) {
        var seen = new HashSet<Integer>();
        for (int place : order) {
            if (place < 1 || place > count) {
                throw new IllegalArgumentException("The order names place " + place + ", but there are " + count
                        + " places: number them from 1 without a gap, for example " + EXAMPLE + ".");
            }
            if (!seen.add(place)) {
                throw new IllegalArgumentException("The order names place " + place + " twice: name each place once, "
                        + "for example " + EXAMPLE + ".");
            }
        }
        if (order.size() != count) {
            throw new IllegalArgumentException("The order names " + order.size() + " of " + count + " places: name each "
                    + "place once, for example " + EXAMPLE + ".");
        }
        return List.copyOf(order);
    }
}
