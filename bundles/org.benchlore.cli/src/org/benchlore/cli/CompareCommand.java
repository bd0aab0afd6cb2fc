// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.concurrent.Callable;

import org.benchlore.model.Procedure;
import org.benchlore.workshop.Comparison;
import org.benchlore.workshop.Comparisons;
import org.benchlore.workshop.OpenLibrary;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says in words how two versions of an element differ. */
@Command(name = "compare", description = "Say in words how one version of an element differs from another.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit codes: 0 they differ; 1 they are alike; 2 unknown id or file; 3 library unreadable."})
final class CompareCommand implements Callable<Integer> {

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(index = "0", paramLabel = "A", description = "Id of an element, or a file that holds one.")
    private String first;

    @Parameters(index = "1", arity = "0..1", paramLabel = "B",
            description = "Another one: it is told how B differs from A. Without B, how A differs from what was reviewed.")
    private String second;

    CompareCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        try (var open = desk.openAndRemark(library.folder())) {
            var comparison = comparison(open);
            if (library.isJson()) {
                desk.print(json(comparison));
            } else {
                print(comparison);
            }
            return comparison.sentences().isEmpty() ? Exit.EMPTY : Exit.DONE;
        }
    }

    private Comparison comparison(OpenLibrary open) throws BadArgument {
        var comparisons = open.comparisons();
        try {
            return second == null ? sinceReview(comparisons)
                    : comparisons.between(comparisons.find(first), comparisons.find(second));
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private Comparison sinceReview(Comparisons comparisons) throws BadArgument {
        var now = comparisons.find(first);
        if (now.element() instanceof Procedure procedure) {
            return comparisons.sinceReview(procedure).orElseThrow(() -> new BadArgument("No copy of " + now.name()
                    + " as it was reviewed was kept: name a second id or file to compare it with"));
        }
        throw new BadArgument(now.name() + " is no procedure, and only procedures are reviewed:"
                + " name a second id or file to compare it with");
    }

    private void print(Comparison comparison) {
        int count = comparison.sentences().size();
        desk.out().println(comparison.after() + (count == 0 ? " does not differ from " : " differs from ")
                + comparison.before() + (count == 0 ? "." : ":"));
        comparison.sentences().forEach(sentence -> desk.out().println("  " + sentence));
    }

    private static JsonObject json(Comparison comparison) {
        var json = new JsonObject();
        json.addProperty("before", comparison.before());
        json.addProperty("after", comparison.after());
        var differences = new JsonArray();
        comparison.sentences().forEach(differences::add);
        json.add("differences", differences);
        return json;
    }
}
