// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.check.Problem;
import org.benchlore.check.Report;
import org.benchlore.check.RulesDocument;
import org.benchlore.check.Silenced;
import org.benchlore.model.Address;
import org.benchlore.model.Procedure;
import org.benchlore.page.TextRenderer;
import org.benchlore.store.Row;
import org.benchlore.store.UnknownId;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.NullProgressMonitor;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks the library, or some of its elements, by the rules. */
@Command(name = "check", description = "Check the whole library, or some elements, by the rules.", mixinStandardHelpOptions = true,
        footer = {"", "Exit codes: 0 no problem; 1 problems found; 2 unknown id; 3 library unreadable."})
final class CheckCommand implements Callable<Integer> {

    private static final int WIDTH = 96;

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(paramLabel = "ID", arity = "0..*", description = "Ids of elements, or file#id; none means the whole library.")
    private List<String> ids = List.of();

    @Option(names = "--rules", description = "Print the rules instead, as Markdown.")
    private boolean rules;

    CheckCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        try (var open = desk.openAndRemark(library.folder())) {
            if (rules) {
                desk.out().print(RulesDocument.of(open.checks().checker().rules()));
                return Exit.DONE;
            }
            var report = report(open);
            if (library.isJson()) {
                desk.print(json(report));
            } else {
                desk.out().println(new TextRenderer(WIDTH).render(open.checks().page("Problems of " + open.title(), report)));
                ids.forEach(id -> sinceReview(open, id));
            }
            return report.open().isEmpty() ? Exit.DONE : Exit.EMPTY;
        }
    }

    private Report report(OpenLibrary open) throws BadArgument {
        if (ids.isEmpty()) {
            return open.checks().all(new NullProgressMonitor());
        }
        var problems = new ArrayList<Problem>();
        var silenced = new ArrayList<Silenced>();
        for (var id : ids) {
            var one = open.checks().checker().of(path(open, id));
            problems.addAll(one.open());
            silenced.addAll(one.silenced());
        }
        return new Report(problems, silenced, ids.size());
    }

    private static String path(OpenLibrary open, String id) throws BadArgument {
        var row = id.contains("#") ? at(open, id) : open.library().catalogue().byId(id);
        return row.map(Row::path).orElseThrow(() -> new BadArgument(
                new UnknownId(open.library().catalogue()).says(id, "element")));
    }

    private static Optional<Row> at(OpenLibrary open, String id) throws BadArgument {
        try {
            return open.library().catalogue().at(Address.parse(id));
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    /** Says how a procedure was changed since its review, where a copy was kept. */
    private void sinceReview(OpenLibrary open, String id) {
        open.library().top(id.substring(id.indexOf('#') + 1)).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .map(procedure -> open.reviewedCopies().changes(procedure, open.comparisons().words())).filter(changes -> !changes.isEmpty())
                .ifPresent(changes -> desk.out().println("Changed since the review: " + String.join("; ", changes)));
    }

    private static JsonObject json(Report report) {
        var json = new JsonObject();
        json.addProperty("files", report.files());
        json.addProperty("errors", report.errors());
        json.addProperty("warnings", report.warnings());
        var open = new JsonArray();
        report.open().forEach(problem -> open.add(json(problem)));
        json.add("problems", open);
        var silenced = new JsonArray();
        report.silenced().forEach(one -> {
            var item = json(one.problem());
            item.addProperty("reason", one.reason());
            silenced.add(item);
        });
        json.add("silenced", silenced);
        return json;
    }

    private static JsonObject json(Problem problem) {
        var json = new JsonObject();
        json.addProperty("rule", problem.rule());
        json.addProperty("severity", problem.severity().name());
        json.addProperty("at", problem.at().toString());
        json.addProperty("place", problem.place());
        json.addProperty("sentence", problem.sentence());
        problem.fix().ifPresent(fix -> json.addProperty("fix", fix.label()));
        return json;
    }
}
