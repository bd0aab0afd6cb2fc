// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The order in which the fasteners of a place are tightened.
 *
 * @param layout how they lie
 * @param order each place once, first the one tightened first
 * @param rule where the order comes from
 */
public record TighteningSequence(Layout layout, List<Integer> order, OrderRule rule) {

    private static final List<String> ASSUMPTIONS = List.of(
            "all fasteners are in and run down by hand before the first stage",
            "like fasteners, evenly spaced, one tool; the first ones tightened lose preload while the others follow, which "
                    + "the closing pass makes up for");

    public TighteningSequence {
        order = OwnOrder.check(order, layout.count());
    }

    /** The published cross pattern of a circle where there is one, else the stated rule. */
    public static TighteningSequence circle(int count) {
        return of(new Layout.Circle(count));
    }

    /** Reads a number of fasteners in a circle. */
    public static TighteningSequence circle(String text) {
        return of(LayoutReader.circle(text));
    }

    /** A rectangle or a row, from the middle outwards. */
    public static TighteningSequence grid(int rows, int columns) {
        return of(new Layout.Grid(rows, columns));
    }

    /** Reads a rectangle such as {@code 2x5}; {@code 1x6} is a row. */
    public static TighteningSequence grid(String text) {
        return of(LayoutReader.grid(text));
    }

    /** Reads an order of one's own such as {@code 1 3 2 4}. */
    public static TighteningSequence own(String text) {
        var order = OwnOrder.read(text);
        return new TighteningSequence(new Layout.Listed(order.size()), order, OrderRule.OWN);
    }

    /**
     * Reads an order of one's own over a circle or a rectangle.
     *
     * @throws IllegalArgumentException with one plain sentence if it does not name each place once
     */
    public static TighteningSequence own(Layout layout, String text) {
        return new TighteningSequence(layout, OwnOrder.read(text), OrderRule.OWN);
    }

    /** The order for a layout; a list is taken as it is numbered. */
    public static TighteningSequence of(Layout layout) {
        if (layout instanceof Layout.Circle circle) {
            var published = CrossPatterns.of(circle.count());
            return new TighteningSequence(layout, published.orElseGet(() -> SpreadRule.order(circle.count())),
                    published.isPresent() ? OrderRule.PUBLISHED : OrderRule.FARTHEST_NEXT);
        }
        return layout instanceof Layout.Grid grid
                ? new TighteningSequence(layout, InsideOut.order(grid), OrderRule.INSIDE_OUT)
                : new TighteningSequence(layout, numbered(layout), OrderRule.OWN);
    }

    private static List<Integer> numbered(Layout layout) {
        return IntStream.rangeClosed(1, layout.count()).boxed().toList();
    }

    /** The order in which they are loosened: the reverse. */
    public List<Integer> loosening() {
        var reverse = new ArrayList<>(order);
        Collections.reverse(reverse);
        return List.copyOf(reverse);
    }

    /** Which one a place is, from 1. */
    public int turnOf(int place) {
        return order.indexOf(place) + 1;
    }

    /** One pass for each stage, then the closing pass: round the circle, elsewhere in the same order once more. */
    public List<Pass> passes(Stages stages) {
        var passes = new ArrayList<Pass>();
        stages.percents().forEach(percent -> passes.add(new Pass(percent, order, false)));
        passes.add(new Pass(stages.percents().get(stages.percents().size() - 1),
                layout instanceof Layout.Circle ? numbered(layout) : order, true));
        return List.copyOf(passes);
    }

    /** The closing pass in words. */
    public String closing() {
        return (layout instanceof Layout.Circle ? "once round clockwise" : "once more in the same order")
                + " at 100 %, until none turns any more";
    }

    /** How places are numbered, in words. */
    public String numbering() {
        if (layout instanceof Layout.Circle) {
            return "places numbered clockwise from the top";
        }
        return layout instanceof Layout.Grid ? "places numbered row by row from the left"
                : "places numbered by their own source";
    }

    /** What was taken for granted, one phrase each. */
    public List<String> assumptions() {
        return ASSUMPTIONS;
    }
}
