// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import java.util.List;
import java.util.stream.IntStream;

import org.benchlore.torque.sequence.Layout;

/**
 * Where the fasteners of a layout are drawn, and how much room that takes.
 *
 * @param width room needed
 * @param height room needed
 * @param all one for each place, in order of the places
 */
record Spots(double width, double height, List<Spot> all) {

    static final double RING = 17;
    private static final double MARGIN = 24;
    private static final double BESIDE = 29;
    private static final double LEAST_RADIUS = 105;
    private static final double APART = 44;
    private static final double PITCH_ACROSS = 58;
    private static final double PITCH_DOWN = 66;
    private static final int LISTED_COLUMNS = 10;

    static Spots of(Layout layout) {
        if (layout instanceof Layout.Circle circle) {
            return round(circle.count());
        }
        int columns = layout instanceof Layout.Grid grid ? grid.columns() : Math.min(LISTED_COLUMNS, layout.count());
        return rectangle(layout.count(), columns);
    }

    private static Spots round(int count) {
        double radius = Math.max(LEAST_RADIUS, count * APART / (2 * Math.PI));
        double half = radius + BESIDE + MARGIN;
        return new Spots(2 * half, 2 * half, IntStream.range(0, count).mapToObj(i -> {
            double angle = 2 * Math.PI * i / count;
            double x = Math.sin(angle);
            double y = -Math.cos(angle);
            return new Spot(half + radius * x, half + radius * y, half + (radius + BESIDE) * x,
                    half + (radius + BESIDE) * y);
        }).toList());
    }

    private static Spots rectangle(int count, int columns) {
        int rows = (count + columns - 1) / columns;
        return new Spots(columns * PITCH_ACROSS + 2 * MARGIN, rows * PITCH_DOWN + 2 * MARGIN,
                IntStream.range(0, count).mapToObj(i -> {
                    double x = MARGIN + (i % columns + 0.5) * PITCH_ACROSS;
                    double y = MARGIN + (i / columns + 0.5) * PITCH_DOWN + BESIDE / 4;
                    return new Spot(x, y, x, y - BESIDE);
                }).toList());
    }
}
