// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.Map;

/**
 * Everything that one run measured.
 *
 * @param settings how it was run
 * @param textBytes bytes of the notes' titles and texts
 * @param fileBytes bytes of the library's files
 * @param building by engine
 * @param queries by class and engine
 * @param updates by step
 * @param opening of the library
 */
record Measured(Settings settings, long textBytes, long fileBytes, Map<String, Building> building, QueryTimes queries,
        Updates.Result updates, Opening opening) {

    /**
     * How a run is made.
     *
     * @param notes number of notes
     * @param rounds rounds of which the median is taken
     * @param queries queries of each class
     * @param updates updates in each round
     * @param seed seed of the notes and queries
     * @param opening whether opening in fresh processes is measured
     */
    record Settings(int notes, int rounds, int queries, int updates, long seed, boolean opening) {
    }
}
