// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

/** What a document of a grade is worth. */
public enum Gain {
    /** The grade itself, as trec_eval counts (from memory). */
    LINEAR {
        @Override
        double of(int grade) {
            return Math.max(0, grade);
        }
    },
    /** Two to the power of the grade, less one. */
    EXPONENTIAL {
        @Override
        double of(int grade) {
            return Math.pow(2, Math.max(0, grade)) - 1;
        }
    };

    abstract double of(int grade);
}
