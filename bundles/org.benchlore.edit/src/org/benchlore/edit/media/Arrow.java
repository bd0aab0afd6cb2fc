// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

/**
 * An arrow on a picture. Its places are shares of the picture's width and height, from the top left: 0 to 1.
 *
 * @param fromX where the shaft begins, to the right
 * @param fromY where the shaft begins, down
 * @param toX where the tip is, to the right
 * @param toY where the tip is, down
 */
public record Arrow(double fromX, double fromY, double toX, double toY) {

    /** Keeps every place within the picture. */
    public Arrow {
        fromX = within(fromX);
        fromY = within(fromY);
        toX = within(toX);
        toY = within(toY);
    }

    /**
     * Returns an arrow to begin with.
     *
     * @return one that points at the middle from the lower left
     */
    public static Arrow first() {
        return new Arrow(0.3, 0.75, 0.5, 0.5);
    }

    private static double within(double share) {
        return Double.isNaN(share) ? 0 : Math.max(0, Math.min(1, share));
    }

    /**
     * Moves the tip.
     *
     * @param right share of the width
     * @param down share of the height
     * @return the arrow after that
     */
    public Arrow tipMoved(double right, double down) {
        return new Arrow(fromX, fromY, toX + right, toY + down);
    }

    /**
     * Moves the other end.
     *
     * @param right share of the width
     * @param down share of the height
     * @return the arrow after that
     */
    public Arrow endMoved(double right, double down) {
        return new Arrow(fromX + right, fromY + down, toX, toY);
    }

    /**
     * Returns the arrow on the picture after a quarter turn to the right.
     *
     * @return an arrow at the same spot of what is shown
     */
    public Arrow turned() {
        return new Arrow(1 - fromY, fromX, 1 - toY, toX);
    }

    /**
     * Returns the outline in pixels, for any means of drawing.
     *
     * @param width width of the picture in pixels
     * @param height height of the picture in pixels
     * @return seven corners, x and y in turn, from the tip around
     */
    public int[] outline(int width, int height) {
        double tipX = toX * width;
        double tipY = toY * height;
        double alongX = tipX - fromX * width;
        double alongY = tipY - fromY * height;
        double length = Math.max(1, Math.hypot(alongX, alongY));
        double x = alongX / length;
        double y = alongY / length;
        double half = Math.max(2, Math.min(width, height) / 110.0);
        double head = Math.min(length, 7 * half);
        double wing = head * 0.5;
        double[][] corners = {{0, 0}, {head, wing}, {head, half}, {length, half}, {length, -half}, {head, -half},
            {head, -wing}};
        var points = new int[2 * corners.length];
        for (int i = 0; i < corners.length; i++) {
            points[2 * i] = (int) Math.round(tipX - corners[i][0] * x - corners[i][1] * y);
            points[2 * i + 1] = (int) Math.round(tipY - corners[i][0] * y + corners[i][1] * x);
        }
        return points;
    }
}
