// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.page.Labels;
import org.benchlore.search.Facet;
import org.benchlore.search.Hit;
import org.benchlore.search.Passage;
import org.benchlore.search.Query;
import org.benchlore.search.Results;
import org.benchlore.store.Row;
import org.benchlore.store.UnknownId;
import org.benchlore.workshop.OpenLibrary;

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

    @Option(names = "--machine", paramLabel = "ID", description = "Only for this machine, or the machine of this unit.")
    private String machine;

    @Option(names = "--limit", paramLabel = "N", description = "At most N hits (default: 10).", defaultValue = "10")
    private int limit;

    @Option(names = "--status", paramLabel = "S", description = "Only with this status, such as held or reviewed.")
    private String status;

    @Option(names = "--year", paramLabel = "YYYY", description = "Only of this year.")
    private String year;

    @Option(names = "--counts", description = "Say how many there are of each kind, machine, system, status and year.")
    private boolean counts;

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
            var query = query(open, chosen);
            var results = open.search().find(query);
            var passages = open.search().passages(query, results.hits().stream().map(Hit::row).toList());
            if (library.isJson()) {
                desk.print(FindJson.of(query, results, passages));
            } else {
                print(open, results, passages);
            }
            if (results.hits().isEmpty()) {
                desk.err().println("benchlore: nothing found for '" + query.text() + "' in " + open.title()
                        + ": try fewer or other words, or the code alone");
                return Exit.EMPTY;
            }
            return Exit.DONE;
        }
    }

    private Query query(OpenLibrary open, Optional<Kind> chosen) throws BadArgument {
        var query = new Query(String.join(" ", words), Map.of(), limit, true)
                .narrowedTo(Facet.KIND, chosen.map(Kind::word).orElse(null))
                .narrowedTo(Facet.MACHINE, machine(open).orElse(null))
                .narrowedTo(Facet.STATUS, status());
        return query.narrowedTo(Facet.YEAR, year());
    }

    private String status() throws BadArgument {
        if (status == null) {
            return null;
        }
        return RowWords.statusOf(status).orElseThrow(() -> new BadArgument("There is no status '" + status
                + "': use one of " + RowWords.statusWords()));
    }

    private String year() throws BadArgument {
        if (year != null && !year.matches("[0-9]{4}")) {
            throw new BadArgument("--year must be four digits, not '" + year + "'");
        }
        return year;
    }

    private Optional<Kind> kind() throws BadArgument {
        if (kind == null) {
            return Optional.empty();
        }
        return Optional.of(Kind.of(kind).orElseThrow(() -> new BadArgument("There is no kind '" + kind + "': use one of "
                + Stream.of(Kind.values()).map(Kind::word).collect(Collectors.joining(", ")))));
    }

    private Optional<String> machine(OpenLibrary open) throws BadArgument {
        if (machine == null) {
            return Optional.empty();
        }
        var catalogue = open.library().catalogue();
        return Optional.of(catalogue.byId(machine).flatMap(row -> switch (row.kind()) {
            case MACHINE -> Optional.of(row.id());
            case UNIT -> row.machines().stream().map(Address::id).findFirst();
            default -> Optional.empty();
        }).orElseThrow(() -> new BadArgument(new UnknownId(catalogue, Kind.MACHINE, Kind.UNIT).says(machine, "machine or unit"))));
    }

    private void print(OpenLibrary open, Results results, List<Passage> passages) {
        results.meant().ifPresent(meant -> desk.out().println("Did you mean '" + meant + "'?"));
        if (results.loosened()) {
            desk.out().println("Nothing holds every word; these hold some of them:");
        }
        for (int i = 0; i < results.hits().size(); i++) {
            if (i > 0 && results.hits().get(i - 1).whole() && !results.hits().get(i).whole()) {
                desk.out().println("These hold only some of the words:");
            }
            print(open, i + 1, results.hits().get(i).row(), passages.get(i));
        }
        if (results.total() > results.hits().size()) {
            desk.out().println(results.hits().size() + " of " + results.total() + "; more with --limit");
        }
        if (counts) {
            results.counts().forEach((facet, found) -> printCounts(open, facet, found));
        }
        if (open.isInvented() && !results.hits().isEmpty()) {
            desk.out().println("Invented for demonstration: not for use on a real machine.");
        }
    }

    private void printCounts(OpenLibrary open, Facet facet, List<Results.Count> found) {
        if (!found.isEmpty()) {
            desk.out().println(facet.name().charAt(0) + facet.name().substring(1).toLowerCase(Locale.ROOT) + ": "
                    + found.stream().map(count -> RowWords.value(open, facet, count.value()) + " " + count.hits())
                            .collect(Collectors.joining(", ")));
        }
    }

    private void print(OpenLibrary open, int number, Row row, Passage passage) {
        desk.out().println(number + ". " + row.title());
        desk.out().println("   " + Stream.of(Labels.of(row.kind()), RowWords.status(row),
                row.date().map(Object::toString).orElse(""), RowWords.machines(open, row))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(" \u00b7 ")));
        if (!passage.text().isBlank() && !passage.text().equals(row.title())) {
            desk.out().println("   " + passage.text());
        }
        if (!passage.why().isEmpty()) {
            desk.out().println("   " + String.join("; ", passage.why()));
        }
        desk.out().println("   show " + row.id());
    }
}
