// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;
import java.util.concurrent.Callable;

import org.benchlore.search.CodeLookup;
import org.benchlore.search.CodeLookup.Reading;
import org.benchlore.store.Row;
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
            if (library.isJson()) {
                desk.print(json(text, readings));
            } else {
                readings.forEach(reading -> print(open, reading));
            }
            if (readings.isEmpty()) {
                desk.err().println("benchlore: " + CodeReader.problem(text).orElse("'" + text
                        + "' is no fault code: write it as on the reader, such as P0841-64, 'SPN 520192 FMI 31' or 4C17"));
                return Exit.EMPTY;
            }
            return Exit.DONE;
        }
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

    private static JsonObject json(String text, List<Reading> readings) {
        var json = new JsonObject();
        json.addProperty("text", text);
        var array = new JsonArray();
        for (var reading : readings) {
            var one = new JsonObject();
            one.addProperty("code", reading.reading().key().text());
            one.addProperty("scheme", reading.reading().key().scheme().name());
            one.addProperty("remark", reading.reading().remark());
            var known = new JsonArray();
            reading.known().stream().map(Row::id).forEach(known::add);
            one.add("known", known);
            array.add(one);
        }
        json.add("readings", array);
        return json;
    }
}
