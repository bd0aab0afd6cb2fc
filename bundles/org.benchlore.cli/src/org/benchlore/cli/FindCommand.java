// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.page.Labels;
import org.benchlore.search.Hit;
import org.benchlore.search.Query;
import org.benchlore.search.Results;
import org.benchlore.workshop.OpenLibrary;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds elements by what is typed. */
@Command(name = "find", description = "Find notes, procedures and everything else by words, symptoms or codes.",
        mixinStandardHelpOptions = true)
final class FindCommand implements Callable<Integer> {

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(paramLabel = "TEXT", arity = "1..*", description = "What to look for.")
    private List<String> words;

    @Option(names = "--kind", paramLabel = "K", description = "Only this kind, such as note or procedure.")
    private String kind;

    @Option(names = "--machine", paramLabel = "ID", description = "Only for this machine.")
    private String machine;

    @Option(names = "--limit", paramLabel = "N", description = "At most N hits (default: 10).", defaultValue = "10")
    private int limit;

    FindCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        if (limit < 1) {
            throw new BadArgument("--limit must be 1 or more, not " + limit);
        }
        var chosen = kind();
        try (var open = desk.openAndRemark(library.folder())) {
            var text = String.join(" ", words);
            var results = open.search().find(new Query(text, chosen, machine(open), limit));
            if (library.isJson()) {
                desk.print(json(text, results));
            } else {
                print(open, results);
            }
            if (results.hits().isEmpty()) {
                desk.err().println("benchlore: nothing found for '" + text + "' in " + open.title()
                        + ": try fewer or other words, or the code alone");
                return Exit.EMPTY;
            }
            return Exit.DONE;
        }
    }

    private Optional<Kind> kind() throws BadArgument {
        if (kind == null) {
            return Optional.empty();
        }
        return Optional.of(Kind.of(kind).orElseThrow(() -> new BadArgument("There is no kind '" + kind + "': use one of "
                + Stream.of(Kind.values()).map(Kind::word).collect(Collectors.joining(", ")))));
    }

    private Optional<String> machine(OpenLibrary open) throws BadArgument {
        if (machine != null && open.library().catalogue().byId(machine).filter(r -> r.kind() == Kind.MACHINE).isEmpty()) {
            throw new BadArgument("There is no machine '" + machine + "': 'find --kind machine TEXT' finds machines");
        }
        return Optional.ofNullable(machine);
    }

    private void print(OpenLibrary open, Results results) {
        if (results.loosened()) {
            desk.out().println("Nothing holds every word; these hold some of them:");
        }
        int number = 0;
        for (var hit : results.hits()) {
            print(open, ++number, hit);
        }
        if (results.total() > results.hits().size()) {
            desk.out().println(results.hits().size() + " of " + results.total() + "; more with --limit");
        }
        if (open.isInvented() && !results.hits().isEmpty()) {
            desk.out().println("Invented for demonstration: not for use on a real machine.");
        }
    }

    private void print(OpenLibrary open, int number, Hit hit) {
        var row = hit.row();
        desk.out().println(number + ". " + row.title());
        desk.out().println("   " + Stream.of(Labels.of(row.kind()), RowWords.status(row),
                row.date().map(Object::toString).orElse(""), RowWords.machines(open, row))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(" · ")));
        if (!hit.excerpt().isBlank() && !hit.excerpt().equals(row.title())) {
            desk.out().println("   " + hit.excerpt());
        }
        desk.out().println("   show " + row.id() + (hit.why().isEmpty() ? "" : "   (" + String.join(", ", hit.why()) + ")"));
    }

    private static JsonObject json(String text, Results results) {
        var json = new JsonObject();
        json.addProperty("text", text);
        json.addProperty("total", results.total());
        json.addProperty("loosened", results.loosened());
        var hits = new JsonArray();
        results.hits().forEach(hit -> hits.add(json(hit)));
        json.add("hits", hits);
        return json;
    }

    private static JsonObject json(Hit hit) {
        var row = hit.row();
        var json = new JsonObject();
        json.addProperty("id", row.id());
        json.addProperty("kind", row.kind().word());
        json.addProperty("title", row.title());
        json.addProperty("path", row.path());
        json.addProperty("status", row.status());
        row.date().ifPresent(date -> json.addProperty("date", date.toString()));
        json.addProperty("invented", row.invented());
        json.addProperty("excerpt", hit.excerpt());
        var why = new JsonArray();
        hit.why().forEach(why::add);
        json.add("why", why);
        return json;
    }
}
