// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

/** How much of its gain a document keeps at a rank, the first rank being 1. */
public enum Discount {
    /** All of it: cumulated gain (CG). */
    NONE {
        @Override
        double at(int rank) {
            return 1;
        }
    },
    /** 1 / log2(rank + 1): the usual form. */
    FROM_THE_FIRST {
        @Override
        double at(int rank) {
            return Math.log(2) / Math.log(rank + 1.0);
        }
    },
    /** 1 / log2(rank), none at rank 1: Järvelin and Kekäläinen 2002 with base 2. */
    FROM_THE_SECOND {
        @Override
        double at(int rank) {
            return rank < 2 ? 1 : Math.log(2) / Math.log(rank);
        }
    };

    abstract double at(int rank);
}
