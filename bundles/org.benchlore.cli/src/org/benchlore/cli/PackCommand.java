// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.model.ProcedureKind;
import org.benchlore.page.Labels;
import org.benchlore.pack.Extra;
import org.benchlore.pack.LeftOut;
import org.benchlore.pack.PackException;
import org.benchlore.pack.PackRequest;
import org.benchlore.pack.Packing;
import org.benchlore.pack.Packing.Form;
import org.benchlore.pack.Selection;
import org.benchlore.pack.Selector;
import org.eclipse.core.runtime.NullProgressMonitor;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a pack of procedures with all that they stand on. */
@Command(name = "pack", description = "Make a pack of procedures with all that they stand on: pages for any tablet, a zip for another library.",
        mixinStandardHelpOptions = true,
        footer = {"", "  pack ~/stick/pto --procedure renew-pto-actuator --learner", "  pack pto.zip --machine dravholm-hl26 --as library",
            "", "Without --procedure, --machine and --system the whole library is packed. Prices, names, units, jobs and what",
            "customers were offered stay out unless named by --with."})
final class PackCommand implements Callable<Integer> {

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(paramLabel = "OUT", description = "A new folder; with '--as library' alone, a new zip file.")
    private Path out;

    @Option(names = "--procedure", paramLabel = "ID", description = "A procedure; may be repeated.")
    private List<String> procedures = List.of();

    @Option(names = "--machine", paramLabel = "ID", description = "All procedures of a machine; may be repeated.")
    private List<String> machines = List.of();

    @Option(names = "--system", paramLabel = "NAME", description = "All procedures of a system of a machine; may be repeated.")
    private List<String> systems = List.of();

    @Option(names = "--kind", paramLabel = "KIND", description = "Only procedures of this kind, such as renew or teach-in; may be repeated.")
    private List<String> kinds = List.of();

    @Option(names = "--as", paramLabel = "FORM", split = ",", description = "html, library, or both: html,library (default: html).")
    private List<String> forms = List.of("html");

    @Option(names = "--with", paramLabel = "WHAT", split = ",",
            description = "What comes along though it stays out otherwise: units, customers, prices, jobs, names.")
    private List<String> extras = List.of();

    @Option(names = "--drafts", description = "Drafts and notes that nobody proved come along, marked.")
    private boolean drafts;

    @Option(names = "--withdrawn", description = "Withdrawn procedures come along, marked.")
    private boolean withdrawn;

    @Option(names = "--learner", description = "Add a learner's way to the pages.")
    private boolean learner;

    @Option(names = "--title", paramLabel = "TEXT", description = "What people call the pack.")
    private String title = "";

    @Option(names = "--preview", description = "Say what would go in and what would not, and write nothing.")
    private boolean preview;

    PackCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        var wanted = forms();
        var request = new PackRequest(title, procedures, machines, systems, kinds(), drafts, withdrawn, extras());
        try (var open = desk.openAndRemark(library.folder())) {
            if (preview) {
                var selection = Selector.of(open.library(), request);
                print(selection, selection.leftOut(), List.of(), 0);
                return Exit.DONE;
            }
            var made = open.packing().make(request, wanted, learner, out, new NullProgressMonitor());
            print(made.selection(), made.leftOut(), made.written(), made.pages());
            return Exit.DONE;
        } catch (PackException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private Set<Form> forms() throws BadArgument {
        var found = EnumSet.noneOf(Form.class);
        for (var form : forms) {
            switch (form.strip().toLowerCase(Locale.ROOT)) {
                case "html" -> found.add(Form.HTML);
                case "library" -> found.add(Form.LIBRARY);
                case "pdf" -> throw new BadArgument("Packs as PDF cannot be made yet: make one '--as html' and print its pages to PDF.");
                case "dita" -> throw new BadArgument("Packs as DITA cannot be made yet: make one '--as html' or '--as library'.");
                default -> throw new BadArgument("'" + form + "' is no form of a pack: write html, library or both.");
            }
        }
        if (learner && !found.contains(Form.HTML)) {
            throw new BadArgument("A learner's way is a page: add '--as html'.");
        }
        if (!found.contains(Form.HTML) && !out.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".zip")) {
            throw new BadArgument("A library pack is a zip file: end '" + out + "' in .zip.");
        }
        return found;
    }

    private Set<ProcedureKind> kinds() throws BadArgument {
        var found = EnumSet.noneOf(ProcedureKind.class);
        for (var kind : kinds) {
            var literal = ProcedureKind.get(kind.strip().toUpperCase(Locale.ROOT).replace('-', '_'));
            if (literal == null || literal == ProcedureKind.NOT_RECORDED) {
                throw new BadArgument("'" + kind + "' is no kind of procedure: write one of " + Stream.of(ProcedureKind.values()).skip(1)
                        .map(it -> it.getLiteral().toLowerCase(Locale.ROOT).replace('_', '-')).collect(Collectors.joining(", ")) + ".");
            }
            found.add(literal);
        }
        return found;
    }

    private Set<Extra> extras() throws BadArgument {
        var found = EnumSet.noneOf(Extra.class);
        for (var extra : extras) {
            found.add(Extra.of(extra.strip()).orElseThrow(() -> new BadArgument("'" + extra + "' is nothing that stays out of a pack: write"
                    + " units, customers, prices, jobs or names.")));
        }
        return found;
    }

    private void print(Selection selection, List<LeftOut> leftOut, List<Path> written, int pages) {
        if (library.isJson()) {
            desk.print(json(selection, leftOut, written, pages));
            return;
        }
        desk.out().println(selection.title() + ": " + Stream.of(Kind.values()).filter(kind -> !selection.rows(kind).isEmpty())
                .map(kind -> counted(selection.rows(kind).size(), kind)).collect(Collectors.joining(", ")) + ".");
        leftOut.forEach(left -> desk.out().println("Not in the pack: " + left));
        if (pages > 0) {
            desk.out().println(pages + " pages; open " + written.get(0).resolve("index.html") + " in a browser.");
        }
        written.stream().filter(path -> path.toString().endsWith(".zip"))
                .forEach(path -> desk.out().println("The library pack is " + path + "; 'take' brings it into another library."));
        if (written.isEmpty()) {
            desk.out().println("Nothing was written.");
        }
    }

    private static String counted(int count, Kind kind) {
        return count + " " + (count == 1 ? Labels.of(kind) : Labels.plural(kind));
    }

    private static JsonObject json(Selection selection, List<LeftOut> leftOut, List<Path> written, int pages) {
        var json = new JsonObject();
        json.addProperty("title", selection.title());
        var contents = new JsonArray();
        selection.rows().keySet().forEach(contents::add);
        json.add("contents", contents);
        var left = new JsonArray();
        leftOut.forEach(one -> {
            var item = new JsonObject();
            item.addProperty("what", one.what());
            item.addProperty("reason", one.reason());
            left.add(item);
        });
        json.add("leftOut", left);
        var places = new JsonArray();
        written.forEach(path -> places.add(path.toString()));
        json.add("written", places);
        json.addProperty("pages", pages);
        return json;
    }
}
