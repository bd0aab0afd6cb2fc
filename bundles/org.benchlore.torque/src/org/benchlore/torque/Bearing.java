// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.List;
import java.util.Objects;

import org.benchlore.measure.Wording;

/**
 * The ring on which the turned head or nut rubs, mm.
 *
 * @param outer outer diameter dw
 * @param inner inner diameter dh, the hole
 * @param words where the diameters come from
 */
public record Bearing(double outer, double inner, String words) {

    private static final double LARGEST = 500;

    /** Size, dw min of ISO 4014, hole dh of ISO 273 medium; both from memory. */
    private record Row(double size, double outer, double inner) {
    }

    private static final List<Row> HEXAGONS = List.of(
            new Row(5, 6.88, 5.5), new Row(6, 8.88, 6.6), new Row(8, 11.63, 9), new Row(10, 14.63, 11),
            new Row(12, 16.63, 13.5), new Row(14, 19.64, 15.5), new Row(16, 22.49, 17.5), new Row(18, 25.34, 20),
            new Row(20, 28.19, 22), new Row(22, 31.71, 24), new Row(24, 33.61, 26));

    public Bearing {
        Objects.requireNonNull(words);
        if (!(inner > 0 && outer > inner && outer <= LARGEST)) {
            throw new IllegalArgumentException("The bearing ring from " + Figures.plain(inner) + " to "
                    + Figures.plain(outer) + " mm cannot be: write the outer diameter, then the hole, for example "
                    + "14.63,11.");
        }
    }

    /**
     * Diameters that were given or measured.
     *
     * @throws IllegalArgumentException with one plain sentence if the outer one is not the larger
     */
    public static Bearing given(double outer, double inner) {
        return new Bearing(outer, inner, ring(outer, inner) + ", as given");
    }

    /**
     * Reads outer diameter and hole in mm, parted by a comma, a blank or a slash: {@code 14.63,11}.
     *
     * @throws IllegalArgumentException with one plain sentence if these are not two fitting numbers
     */
    public static Bearing parse(String text) {
        var parts = (text == null ? "" : text.strip()).split("\\s*[,;/\\s]\\s*");
        if (parts.length != 2) {
            throw new IllegalArgumentException("'" + Wording.shorten(text) + "' is no bearing ring: "
                    + "write the outer diameter, then the hole, in mm, for example 14.63,11.");
        }
        return given(Figures.read("outer diameter", parts[0], 0, LARGEST, "14.63"),
                Figures.read("hole", parts[1], 0, LARGEST, "11"));
    }

    /**
     * A plain hexagon head: by table for M5 to M24, elsewhere 1.5 d over a hole of d, so that the mean is 1.25 d as
     * Shigley takes it (9th ed., equations 8-26 and 8-27).
     */
    public static Bearing hexagon(BoltThread thread) {
        double size = thread.diameter();
        if (thread.series().isInch()) {
            return byRule(size);
        }
        return HEXAGONS.stream().filter(row -> row.size == size).findFirst()
                .map(row -> new Bearing(row.outer, row.inner, "hexagon head without a flange, "
                        + ring(row.outer, row.inner) + " (ISO 4014, ISO 273 medium)"))
                .orElseGet(() -> byRule(size));
    }

    private static Bearing byRule(double size) {
        return new Bearing(1.5 * size, size, "hexagon head without a flange, rubbing at 1.25 times the thread's diameter "
                + "(Shigley)");
    }

    private static String ring(double outer, double inner) {
        return "bearing ring " + Figures.plain(outer) + " mm over a hole of " + Figures.plain(inner) + " mm";
    }

    /** Mean diameter DKm = (dw + dh)/2, mm (VDI 2230-1). */
    public double meanDiameter() {
        return (outer + inner) / 2;
    }
}
