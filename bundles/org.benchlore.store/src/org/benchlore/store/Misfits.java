// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.FileProblem.Severity;

/** Finds what does not fit together among all files, from the catalogue's facts. */
final class Misfits {

    private Misfits() {
    }

    /** Finds files in the wrong folder, ids used twice and references to nothing. */
    static List<FileProblem> amongFiles(Catalogue catalogue) {
        var problems = new ArrayList<FileProblem>();
        var firstById = new HashMap<String, String>();
        for (var entry : catalogue.entries()) {
            problems.addAll(entry.problems());
            entry.row().ifPresent(row -> {
                wrongFolder(row, problems);
                usedTwice(row, firstById, problems);
                dangling(catalogue, row, problems);
            });
        }
        return problems;
    }

    private static void wrongFolder(Row row, List<FileProblem> problems) {
        try {
            var expected = row.kind().path(row.id());
            if (!expected.equals(row.path())) {
                problems.add(misfit(row.path(), "the file belongs at " + expected + ": move it there"));
            }
        } catch (IllegalArgumentException e) {
            problems.add(misfit(row.path(), e.getMessage()));
        }
    }

    private static void usedTwice(Row row, Map<String, String> firstById, List<FileProblem> problems) {
        var first = firstById.putIfAbsent(row.id(), row.path());
        if (first != null) {
            problems.add(misfit(row.path(), "the id '" + row.id() + "' is used by " + first + " too: change one"));
        }
    }

    private static void dangling(Catalogue catalogue, Row row, List<FileProblem> problems) {
        for (var target : row.references()) {
            if (catalogue.at(target).isEmpty()) {
                problems.add(misfit(row.path(), "the reference to " + target + " leads to "
                        + catalogue.entry(target.path()).filter(entry -> !isReadable(entry))
                                .map(entry -> "a file that cannot be read").orElse("nothing: mend or remove it")));
            }
        }
    }

    private static boolean isReadable(Entry entry) {
        return entry.row().isPresent();
    }

    private static FileProblem misfit(String path, String reason) {
        return new FileProblem(path, 0, reason, Severity.MISFIT);
    }
}
