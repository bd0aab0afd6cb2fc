// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;
import java.util.concurrent.Callable;

import org.benchlore.store.FileProblem;
import org.eclipse.core.runtime.NullProgressMonitor;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Builds the search index anew and reports what is wrong with the library's files. */
@Command(name = "index", description = "Build the search index anew and report problems of the library's files.",
        mixinStandardHelpOptions = true)
final class IndexCommand implements Callable<Integer> {

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    IndexCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        try (var open = desk.open(library.folder())) {
            int files = open.search().rebuild(new NullProgressMonitor());
            var problems = open.library().problems();
            if (library.isJson()) {
                desk.print(json(files, problems));
            } else {
                desk.out().println(open.title() + ": " + files + " files indexed, " + problems.size()
                        + (problems.size() == 1 ? " problem" : " problems"));
                problems.forEach(desk.out()::println);
            }
            return problems.isEmpty() ? Exit.DONE : Exit.EMPTY;
        }
    }

    private static JsonObject json(int files, List<FileProblem> problems) {
        var json = new JsonObject();
        json.addProperty("files", files);
        var array = new JsonArray();
        for (var problem : problems) {
            var one = new JsonObject();
            one.addProperty("path", problem.path());
            one.addProperty("line", problem.line());
            one.addProperty("severity", problem.severity().name());
            one.addProperty("reason", problem.reason());
            array.add(one);
        }
        json.add("problems", array);
        return json;
    }
}
