// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.search.CodeLookup;
import org.benchlore.search.CodeLookup.Reading;
import org.benchlore.store.Row;
import org.benchlore.terms.CodeAuthority;
import org.benchlore.terms.CodeReader;
import org.benchlore.workshop.OpenLibrary;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says what a fault code is, in every way in which it can be read. */
@Command(name = "code", description = "Say what a fault code is, in every way in which it can be read.",
        mixinStandardHelpOptions = true)
final class CodeCommand implements Callable<Integer> {

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(paramLabel = "TEXT", arity = "1..*", description = "A code as it is written or shown.")
    private List<String> words;

    CodeCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        var text = String.join(" ", words);
        try (var open = desk.openAndRemark(library.folder())) {
            var readings = new CodeLookup(open.library().catalogue()).read(text);
            var problem = CodeReader.problem(text);
            if (library.isJson()) {
                desk.print(json(text, readings, problem));
            } else {
                readings.forEach(reading -> print(open, reading));
            }
            problem.filter(sentence -> !isSaid(sentence, readings))
                    .ifPresent(sentence -> desk.err().println("benchlore: " + sentence));
            return readings.isEmpty() ? Exit.EMPTY : Exit.DONE;
        }
    }

    private static boolean isSaid(String sentence, List<Reading> readings) {
        return readings.stream().anyMatch(reading -> reading.reading().remark().contains(sentence));
    }

    private void print(OpenLibrary open, Reading reading) {
        var key = reading.reading().key();
        desk.out().println(key.text() + "   " + key.scheme().words());
        for (var row : reading.known()) {
            desk.out().println("   " + row.title() + "   show " + row.id());
            var machines = RowWords.machines(open, row);
            if (!machines.isEmpty()) {
                desk.out().println("   " + machines + (row.invented() ? " (invented)" : ""));
            }
        }
        desk.out().println("   " + reading.reading().remark());
    }

    private static JsonObject json(String text, List<Reading> readings, Optional<String> problem) {
        var json = new JsonObject();
        json.addProperty("text", text);
        var array = new JsonArray();
        readings.stream().map(CodeCommand::json).forEach(array::add);
        json.add("readings", array);
        problem.ifPresent(sentence -> json.addProperty("problem", sentence));
        return json;
    }

    private static JsonObject json(Reading reading) {
        var key = reading.reading().key();
        var json = new JsonObject();
        json.addProperty("code", key.text());
        json.addProperty("scheme", key.scheme().name());
        json.addProperty("definedBy", CodeAuthority.of(key).name());
        json.addProperty("remark", reading.reading().remark());
        var known = new JsonArray();
        reading.known().stream().map(Row::id).forEach(known::add);
        json.add("known", known);
        return json;
    }
}
