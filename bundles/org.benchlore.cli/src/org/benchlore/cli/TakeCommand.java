// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import org.benchlore.pack.PackException;
import org.benchlore.pack.learn.Progress;
import org.benchlore.pack.learn.Trainings;
import org.benchlore.pack.take.Item;
import org.benchlore.pack.take.Preview;
import org.benchlore.pack.take.Taking.Conflicts;
import org.benchlore.pack.take.Verdict;
import org.benchlore.pack.zip.PackFile;
import org.benchlore.page.Labels;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.NullProgressMonitor;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a pack of another library, or a learner's progress, into a library. */
@Command(name = "take", description = "Take a library pack of another shop, or a learner's progress file, into the library.",
        mixinStandardHelpOptions = true,
        footer = {"", "  take pto.zip --preview", "  take pto.zip --conflicts mine", "  take --back",
            "  take progress-tilda.txt --person tilda-rook", "",
            "All of a pack is taken or nothing. What the library has later stays. While there is a conflict nothing is taken until",
            "'--conflicts' says whose is kept. '--back' puts everything back as it was before the last pack."})
final class TakeCommand implements Callable<Integer> {

    private static final int HEAD = 200;

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(paramLabel = "PACK", arity = "0..1", description = "A zip file that 'pack' made, or a progress file.")
    private Path pack;

    @Option(names = "--preview", description = "Say what would be taken, and take nothing.")
    private boolean preview;

    @Option(names = "--conflicts", paramLabel = "WHOSE", description = "mine: the library's own stays; pack: what the pack says is taken.")
    private String conflicts;

    @Option(names = "--back", description = "Put everything back as it was before the last pack was taken.")
    private boolean back;

    @Option(names = "--person", paramLabel = "ID", description = "The learner whose progress it is.")
    private String person;

    TakeCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        if (back == (pack != null)) {
            throw new BadArgument("Name a pack, or say --back alone.");
        }
        var whose = conflicts();
        try (var open = desk.openAndRemark(library.folder())) {
            if (back) {
                return back(open);
            }
            return isProgress() ? progress(open) : pack(open, whose);
        } catch (PackException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private Conflicts conflicts() throws BadArgument {
        if (conflicts == null) {
            return Conflicts.REFUSE;
        }
        return switch (conflicts) {
            case "mine" -> Conflicts.KEEP_OWN;
            case "pack" -> Conflicts.TAKE_THEIRS;
            default -> throw new BadArgument("'" + conflicts + "' does not say whose is kept: write --conflicts mine or --conflicts pack.");
        };
    }

    private boolean isProgress() throws BadArgument {
        try (var stream = Files.newInputStream(pack)) {
            return Progress.isProgress(new String(stream.readNBytes(HEAD), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new BadArgument("'" + pack + "' cannot be read: name a zip file that 'pack' made, or a progress file.");
        }
    }

    private int back(OpenLibrary open) throws PackException {
        var paths = open.taking().back();
        if (library.isJson()) {
            var json = new JsonObject();
            var array = new JsonArray();
            paths.forEach(array::add);
            json.add("putBack", array);
            desk.print(json);
        } else {
            desk.out().println("Put back as it was: " + paths.size() + (paths.size() == 1 ? " file." : " files."));
        }
        return Exit.DONE;
    }

    private int pack(OpenLibrary open, Conflicts whose) throws PackException, IOException {
        try (var file = PackFile.open(pack, new NullProgressMonitor())) {
            var result = preview ? open.taking().preview(file, new NullProgressMonitor())
                    : open.taking().take(file, whose, new NullProgressMonitor());
            if (library.isJson()) {
                desk.print(json(result, whose));
            } else {
                print(result, whose);
            }
            return preview && !result.of(Verdict.CONFLICT).isEmpty() || !preview && !result.hasNews() && whose != Conflicts.TAKE_THEIRS
                    ? Exit.EMPTY : Exit.DONE;
        }
    }

    private void print(Preview result, Conflicts whose) {
        var manifest = result.manifest();
        desk.out().println("Pack '" + manifest.title() + "' of " + manifest.made() + " by " + manifest.shop() + ".");
        if (manifest.invented()) {
            desk.out().println(Labels.INVENTED);
        }
        for (var verdict : Verdict.values()) {
            result.of(verdict).forEach(item -> print(item));
        }
        manifest.leftOut().forEach(left -> desk.out().println("Not in the pack: " + left));
        var counts = new StringBuilder();
        for (var verdict : Verdict.values()) {
            counts.append(counts.isEmpty() ? "" : ", ").append(result.of(verdict).size()).append(' ').append(verdict.word());
        }
        desk.out().println((preview ? "Nothing was taken yet: " : whose == Conflicts.TAKE_THEIRS ? "Taken, conflicts as the pack has them: "
                : "Taken what is new and changed: ") + counts + "." + (preview ? "" : " 'take --back' puts everything back."));
        desk.out().println("What was reviewed elsewhere was not reviewed for your machines: check it before you work from it.");
    }

    private void print(Item item) {
        if (item.verdict() == Verdict.SAME) {
            return;
        }
        desk.out().println(item.verdict().word() + "  " + item.path() + "  " + item.title() + (item.reason().isEmpty() ? "" : ": " + item.reason()));
        item.differences().forEach(difference -> desk.out().println("      " + difference));
    }

    private JsonObject json(Preview result, Conflicts whose) {
        var json = new JsonObject();
        json.addProperty("title", result.manifest().title());
        json.addProperty("shop", result.manifest().shop());
        json.addProperty("made", result.manifest().made().toString());
        json.addProperty("invented", result.manifest().invented());
        json.addProperty("taken", !preview);
        json.addProperty("conflicts", whose.name());
        var items = new JsonArray();
        result.items().forEach(item -> {
            var one = new JsonObject();
            one.addProperty("path", item.path());
            one.addProperty("title", item.title());
            one.addProperty("verdict", item.verdict().word());
            one.addProperty("reason", item.reason());
            var differences = new JsonArray();
            item.differences().forEach(differences::add);
            one.add("differences", differences);
            items.add(one);
        });
        json.add("items", items);
        return json;
    }

    private int progress(OpenLibrary open) throws PackException, BadArgument, IOException {
        if (person == null) {
            throw new BadArgument("Say whose progress it is: add --person with the id of a person of the shop.");
        }
        var progress = Progress.read(Files.readString(pack));
        var lines = preview ? open.trainings().preview(person, progress) : open.trainings().take(person, progress);
        if (library.isJson()) {
            desk.print(json(lines));
        } else {
            lines.forEach(line -> desk.out().println((line.isTaken() ? preview ? "would be taken" : "taken" : "not taken (" + line.refusal() + ")")
                    + "  " + Labels.of(line.level()) + "  " + line.title() + line.on().map(day -> ", " + day).orElse("")
                    + (line.mentor().isEmpty() ? "" : ", " + line.mentor())));
        }
        return lines.stream().anyMatch(Trainings.Line::isTaken) ? Exit.DONE : Exit.EMPTY;
    }

    private static JsonArray json(List<Trainings.Line> lines) {
        var array = new JsonArray();
        lines.forEach(line -> {
            var one = new JsonObject();
            one.addProperty("procedure", line.procedure());
            one.addProperty("title", line.title());
            one.addProperty("level", line.level().getLiteral());
            line.on().ifPresent(day -> one.addProperty("on", day.toString()));
            one.addProperty("mentor", line.mentor());
            one.addProperty("taken", line.isTaken());
            one.addProperty("refusal", line.refusal());
            array.add(one);
        });
        return array;
    }
}
