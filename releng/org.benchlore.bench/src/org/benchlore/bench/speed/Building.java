// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.bench.Folders;

/**
 * What building an index took and how large it became.
 *
 * @param time of the whole process, merging and closing included
 * @param bytes size on the disk
 */
record Building(Clock.Time time, long bytes) {

    /** Builds an index in an empty folder and closes it. */
    interface Builder {
        void build(Path folder) throws Exception;
    }

    /** Builds with each in turn; the indexes of the last round stay, in folders named after their engine. */
    static Map<String, Building> measure(Map<String, Builder> builders, Folders folders, int rounds) throws Exception {
        var kept = new LinkedHashMap<String, List<Building>>();
        for (int round = 0; round < rounds; round++) {
            for (var builder : builders.entrySet()) {
                Folders.remove(folders.of(builder.getKey()));
                var folder = folders.of(builder.getKey());
                var time = new Clock().ofProcess(() -> builder.getValue().build(folder));
                kept.computeIfAbsent(builder.getKey(), name -> new ArrayList<>())
                        .add(new Building(time, Folders.size(folder)));
            }
        }
        var medians = new LinkedHashMap<String, Building>();
        kept.forEach((name, of) -> medians.put(name, median(of)));
        return medians;
    }

    private static Building median(List<Building> rounds) {
        return new Building(new Clock.Time(Spread.median(rounds, one -> one.time().cpu()),
                Spread.median(rounds, one -> one.time().wall())), (long) Spread.median(rounds, Building::bytes));
    }
}
