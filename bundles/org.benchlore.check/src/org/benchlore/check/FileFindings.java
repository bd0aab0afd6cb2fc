// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/**
 * What was found, file by file and by how far the rules looked. Files in which something was found are kept apart, so
 * that after a change the others need not be gone through. Safe for several threads.
 */
final class FileFindings {

    private final Set<String> files = ConcurrentHashMap.newKeySet();
    private final Map<String, Found> troubled = new ConcurrentHashMap<>();

    /** What was found in one file. */
    record Found(List<Problem> alone, List<Problem> withNeighbours, List<Problem> amongAll) {

        private static final Found NOTHING = new Found(List.of(), List.of(), List.of());

        Found near(List<Problem> problems) {
            return new Found(alone, problems, amongAll);
        }

        Found among(List<Problem> problems) {
            return new Found(alone, withNeighbours, problems);
        }

        Found within(List<Problem> ofFile, List<Problem> near) {
            return new Found(ofFile, near, amongAll);
        }

        private boolean isNothing() {
            return alone.isEmpty() && withNeighbours.isEmpty() && amongAll.isEmpty();
        }
    }

    void clear() {
        files.clear();
        troubled.clear();
    }

    void remove(String path) {
        files.remove(path);
        troubled.remove(path);
    }

    /** Puts what is found now in the place of what was found before. */
    void change(String path, UnaryOperator<Found> change) {
        files.add(path);
        troubled.compute(path, (key, known) -> {
            var now = change.apply(known == null ? Found.NOTHING : known);
            return now.isNothing() ? null : now;
        });
    }

    /** The files that were looked at. */
    Set<String> files() {
        return files;
    }

    /** Adds the files in which library rules found something. */
    void addFoundAmongAll(Set<String> paths) {
        troubled.forEach((path, found) -> {
            if (!found.amongAll().isEmpty()) {
                paths.add(path);
            }
        });
    }

    void addTo(Collection<Problem> all) {
        troubled.values().forEach(found -> {
            all.addAll(found.alone());
            all.addAll(found.withNeighbours());
            all.addAll(found.amongAll());
        });
    }
}
