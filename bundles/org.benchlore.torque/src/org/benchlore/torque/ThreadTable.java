// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sizes known here: metric M1.6 to M39, the range of ISO 898-1, with the pitches of ISO 261; unified coarse and
 * fine from 1/4 to 1 1/2 in (ASME B1.1), the range of SAE J429. Pitches from memory.
 */
final class ThreadTable {

    static final double INCH = 25.4;

    /** A size with its pitches in mm or threads to the inch, the coarse one first. */
    record Size(String name, double diameter, List<String> pitches) {

        Optional<String> pitch(String written) {
            double value = Double.parseDouble(written);
            return pitches.stream().filter(pitch -> Double.parseDouble(pitch) == value).findFirst();
        }

        String choice() {
            return String.join(", ", pitches);
        }
    }

    private static final String METRIC = """
            1.6 0.35|2 0.4|2.5 0.45|3 0.5 0.35|3.5 0.6|4 0.7 0.5|5 0.8 0.5|6 1 0.75|7 1 0.75|8 1.25 1 0.75
            10 1.5 1.25 1 0.75|12 1.75 1.5 1.25 1|14 2 1.5 1.25 1|16 2 1.5 1|18 2.5 2 1.5 1|20 2.5 2 1.5 1
            22 2.5 2 1.5 1|24 3 2 1.5 1|27 3 2 1.5 1|30 3.5 3 2 1.5 1|33 3.5 3 2 1.5|36 4 3 2 1.5|39 4 3 2 1.5""";

    private static final String INCHES = """
            1/4 20 28|5/16 18 24|3/8 16 24|7/16 14 20|1/2 13 20|9/16 12 18|5/8 11 18|3/4 10 16|7/8 9 14|1 8 12
            1+1/8 7 12|1+1/4 7 12|1+3/8 6 12|1+1/2 6 12""";

    private final List<Size> metric = sizes(METRIC);
    private final List<Size> inches = sizes(INCHES);

    private static List<Size> sizes(String table) {
        return Arrays.stream(table.split("[|\\n]")).map(ThreadTable::size).toList();
    }

    private static Size size(String row) {
        var words = row.split(" ");
        return new Size(words[0].replace('+', ' '), diameter(words[0]), List.of(words).subList(1, words.length));
    }

    /** Millimetres of a metric size, inches of an inch size. */
    private static double diameter(String name) {
        double sum = 0;
        for (var part : name.split("\\+")) {
            var fraction = part.split("/");
            sum += Double.parseDouble(fraction[0]) / (fraction.length > 1 ? Double.parseDouble(fraction[1]) : 1);
        }
        return sum;
    }

    Optional<Size> metric(double diameter) {
        return find(metric, diameter);
    }

    Optional<Size> inch(double diameter) {
        return find(inches, diameter);
    }

    private static Optional<Size> find(List<Size> sizes, double diameter) {
        return sizes.stream().filter(size -> size.diameter() == diameter).findFirst();
    }

    String metricChoice() {
        return "M" + metric.get(0).name() + " to M" + metric.get(metric.size() - 1).name();
    }

    String inchChoice() {
        return inches.stream().map(Size::name).collect(Collectors.joining(", "));
    }

    /** Every thread of the tables. */
    List<BoltThread> all() {
        return Stream.concat(
                metric.stream().flatMap(size -> size.pitches().stream().map(pitch -> metric(size, pitch))),
                inches.stream().flatMap(size -> size.pitches().stream().map(pitch -> inch(size, pitch)))).toList();
    }

    static BoltThread metric(Size size, String pitch) {
        boolean isCoarse = pitch.equals(size.pitches().get(0));
        return new BoltThread("M" + size.name() + (isCoarse ? "" : "×" + pitch),
                isCoarse ? ThreadSeries.METRIC_COARSE : ThreadSeries.METRIC_FINE, size.diameter(),
                Double.parseDouble(pitch));
    }

    static BoltThread inch(Size size, String threads) {
        var series = threads.equals(size.pitches().get(0)) ? ThreadSeries.UNC : ThreadSeries.UNF;
        return new BoltThread(size.name() + "-" + threads + " " + series, series, size.diameter() * INCH,
                INCH / Double.parseDouble(threads));
    }
}
