// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.PrintWriter;
import java.nio.file.Path;

import org.benchlore.store.FileProblem;
import org.benchlore.store.LibraryException;
import org.benchlore.workshop.OpenLibrary;
import org.benchlore.workshop.Use;
import org.benchlore.workshop.Workshop;
import org.eclipse.core.runtime.NullProgressMonitor;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonElement;

/**
 * What every command works with.
 *
 * @param workshop the services
 * @param out where results go
 * @param err where remarks and errors go
 */
record Desk(Workshop workshop, PrintWriter out, PrintWriter err) {

    private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    /** Opens a library, or the user's copy of the demonstration library if {@code folder} is null. */
    OpenLibrary open(Path folder) throws LibraryException {
        return workshop.open(folder == null ? workshop.demonstration() : folder, Use.LOOK_UP,
                new NullProgressMonitor());
    }

    /** Opens a library and says on standard error what a person should know about it. */
    OpenLibrary openAndRemark(Path folder) throws LibraryException {
        var library = open(folder);
        library.search().notice().ifPresent(notice -> err.println("benchlore: " + notice));
        library.library().catalogue().entries().stream().flatMap(entry -> entry.problems().stream())
                .filter(problem -> problem.severity() == FileProblem.Severity.UNREADABLE)
                .forEach(problem -> err.println("benchlore: set apart: " + problem));
        return library;
    }

    void print(JsonElement json) {
        out.println(GSON.toJson(json));
    }
}
