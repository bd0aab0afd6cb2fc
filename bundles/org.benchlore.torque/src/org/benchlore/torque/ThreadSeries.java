// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/** The thread series known here. */
public enum ThreadSeries {
    /** Metric, coarse pitch (ISO 261, ISO 262). */
    METRIC_COARSE("metric coarse", "ISO 261"),
    /** Metric, one of the fine pitches (ISO 261, ISO 262). */
    METRIC_FINE("metric fine", "ISO 261"),
    /** Unified coarse (ASME B1.1). */
    UNC("unified coarse", "ASME B1.1"),
    /** Unified fine (ASME B1.1). */
    UNF("unified fine", "ASME B1.1");

    private final String words;
    private final String standard;

    ThreadSeries(String words, String standard) {
        this.words = words;
        this.standard = standard;
    }

    /** The name in words. */
    public String words() {
        return words;
    }

    /** The standard that lists its sizes. */
    public String standard() {
        return standard;
    }

    /** Whether sizes are in inches. */
    public boolean isInch() {
        return this == UNC || this == UNF;
    }
}
