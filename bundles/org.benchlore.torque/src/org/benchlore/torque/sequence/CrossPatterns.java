// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Cross patterns of ASME PCC-1 (2010 and 2013, Table 4, from memory; that of 12 also seen on an unsourced page).
 * Places clockwise.
 */
final class CrossPatterns {

    private static final List<String> LISTS = List.of(
            "1 3 2 4",
            "1 5 3 7 2 6 4 8",
            "1 7 4 10 2 8 5 11 3 9 6 12",
            "1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16",
            "1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19",
            "1 13 7 19 4 16 10 22 2 14 8 20 5 17 11 23 3 15 9 21 6 18 12 24",
            "1 15 8 22 4 18 11 25 6 20 13 27 2 16 9 23 5 19 12 26 7 21 14 28 3 17 10 24",
            "1 17 9 25 5 21 13 29 3 19 11 27 7 23 15 31 2 18 10 26 6 22 14 30 4 20 12 28 8 24 16 32");

    private CrossPatterns() {
    }

    static Optional<List<Integer>> of(int count) {
        return LISTS.stream().map(list -> Arrays.stream(list.split(" ")).map(Integer::valueOf).toList())
                .filter(list -> list.size() == count).findFirst();
    }
}
