// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.chance;

/**
 * So many cases of so many, with what is likely to stand behind them.
 *
 * @param cases how often it was met, may be a part of one where a case counts less
 * @param of of how many, at least {@code cases}
 */
public record Share(double cases, double of) {

    /** Under so many cases a count is shown and never a rate. */
    public static final int ENOUGH = 3;

    /** Refuses more cases than there were. */
    public Share {
        if (!(cases >= 0 && of >= cases)) {
            throw new IllegalArgumentException(cases + " cases cannot be among " + of);
        }
    }

    /**
     * Returns the share after somebody's own figure was given its worth in cases (Beta prior, mean of the posterior).
     *
     * @param figure the figure, above 0 and below 1
     * @param worth how many cases it is worth, above 0
     * @return above 0 and below 1
     */
    public double after(double figure, double worth) {
        return (worth * figure + cases) / (worth + of);
    }

    /**
     * Returns within what the true share lies, by Wilson's interval (1927, from memory).
     *
     * @param mean the best figure, above 0 and below 1
     * @param size how many cases it is worth, above 0
     * @param percent how sure it should be, such as 80
     * @return lower and upper end
     */
    public static double[] band(double mean, double size, double percent) {
        var z = deviation(percent);
        var square = z * z / size;
        var middle = (mean + square / 2) / (1 + square);
        var half = z / (1 + square) * Math.sqrt(mean * (1 - mean) / size + square / (4 * size));
        return new double[] {middle - half, middle + half};
    }

    /** The number of deviations within which so many per cent of a normal distribution lie, by halving. */
    static double deviation(double percent) {
        double low = 0;
        double high = 8;
        for (int i = 0; i < 60; i++) {
            var middle = (low + high) / 2;
            if (within(middle) * 100 < percent) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Share of a normal distribution within so many deviations: the series of the error function. */
    private static double within(double z) {
        var x = z / Math.sqrt(2);
        var term = x;
        var sum = x;
        for (int n = 1; n < 400; n++) {
            term *= 2 * x * x / (2 * n + 1);
            sum += term;
        }
        return 2 / Math.sqrt(Math.PI) * Math.exp(-x * x) * sum;
    }
}
