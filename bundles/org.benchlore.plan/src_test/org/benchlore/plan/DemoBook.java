// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;

/** A copy of the demonstration library, and plans from it for Wednesday 25 November 2026. */
final class DemoBook {

    static final LocalDate WEDNESDAY = LocalDate.of(2026, 11, 25);

    private final Library library;

    DemoBook(Path folder) throws Exception {
        KnownLibrary.copy(folder.resolve("library"), folder.resolve("cache"));
        library = Library.open(folder.resolve("library"), folder.resolve("cache"), new NullProgressMonitor());
    }

    Library library() {
        return library;
    }

    Plan plan(String subject, String... procedures) throws PlanException {
        return plan(subject, List.of(procedures), List.of(), List.of());
    }

    Plan plan(String subject, List<String> procedures, List<String> open, List<String> done) throws PlanException {
        return new Planner(library).plan(new PlanRequest(subject, procedures, open, done, WEDNESDAY, Optional.empty()));
    }
}
