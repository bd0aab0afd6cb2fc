// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

/** One black mark on white. Lengths and places in units of the drawing, x to the right, y down. */
public sealed interface Shape {

    /**
     * A ring, white inside.
     *
     * @param x middle
     * @param y middle
     * @param radius radius to the middle of its line
     * @param line width of its line
     */
    record Ring(double x, double y, double radius, double line) implements Shape {
    }

    /**
     * A thin dashed line.
     *
     * @param fromX start
     * @param fromY start
     * @param toX end
     * @param toY end
     */
    record Dash(double fromX, double fromY, double toX, double toY) implements Shape {
    }

    /**
     * A line of text.
     *
     * @param x its middle, or its start
     * @param y middle of its capitals
     * @param size height of type
     * @param strong whether it is bold
     * @param middle whether x is its middle
     * @param text the words
     */
    record Label(double x, double y, double size, boolean strong, boolean middle, String text) implements Shape {
    }

    /**
     * A line.
     *
     * @param fromX start
     * @param fromY start
     * @param toX end
     * @param toY end
     * @param line its width
     */
    record Line(double fromX, double fromY, double toX, double toY, double line) implements Shape {
    }

    /**
     * A frame, white inside.
     *
     * @param x left edge
     * @param y upper edge
     * @param width width
     * @param height height
     * @param line width of its line
     * @param isDashed whether its line is dashed
     */
    record Box(double x, double y, double width, double height, double line, boolean isDashed) implements Shape {
    }
}
