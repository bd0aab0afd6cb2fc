// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Evidence;
import org.benchlore.plan.KnownLibrary;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;

/** A copy of the demonstration library to which files may be added, and what is worth adding on 25 November 2026. */
final class AddingBook {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final Path folder;
    private final Path cache;

    AddingBook(Path place) {
        this.folder = place.resolve("library");
        this.cache = place.resolve("cache");
        KnownLibrary.copy(folder, cache);
    }

    /** Adds a file made from another one by replacing words, first those given first. */
    AddingBook with(String from, String to, List<Map.Entry<String, String>> words) throws IOException {
        var text = Files.readString(folder.resolve(from));
        for (var word : words) {
            text = text.replace(word.getKey(), word.getValue());
        }
        Files.writeString(folder.resolve(to), text);
        return this;
    }

    Adding adding(String subject, String procedure) throws Exception {
        return adding(subject, procedure, OptionalInt.empty());
    }

    Adding adding(String subject, String procedure, OptionalInt years) throws Exception {
        return adding(new PlanRequest(subject, List.of(procedure), List.of(), List.of(), DAY, Optional.empty()), years);
    }

    Adding adding(PlanRequest request, OptionalInt years) throws Exception {
        return adding(request, years, new NullProgressMonitor());
    }

    Adding adding(PlanRequest request, OptionalInt years, IProgressMonitor monitor) throws Exception {
        try (var library = Library.open(folder, cache, new NullProgressMonitor()); var evidence = Evidence.following(library)) {
            return new Adder(library, new Planner(library), evidence).adding(request, years, CountingRules.usual(), monitor);
        }
    }

    PlanRequest request(String procedure, List<String> open, List<String> done) throws PlanException {
        return new PlanRequest("lorry-21", List.of(procedure), open, done, DAY, Optional.empty());
    }
}
