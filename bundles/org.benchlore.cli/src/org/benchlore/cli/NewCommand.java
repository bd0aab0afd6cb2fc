// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.benchlore.store.LibraryException;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a new library. */
@Command(name = "new", description = "Make a new library in an empty folder.", mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "DIR", description = "A folder that is empty or does not exist yet.")
    private Path folder;

    @Option(names = "--title", paramLabel = "NAME", description = "What people call the shop (default: the folder's name).")
    private String title;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    NewCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        var place = folder.toAbsolutePath().normalize();
        try {
            desk.workshop().create(place, title == null ? String.valueOf(place.getFileName()) : title);
        } catch (LibraryException e) {
            throw new BadArgument(e.getMessage());
        }
        if (json) {
            var made = new JsonObject();
            made.addProperty("library", place.toString());
            desk.print(made);
        } else {
            desk.out().println("A new library lies at " + place + ". Open it with --library " + place
                    + ", or in the window; docs/file-format.md says how its files are written.");
        }
        return Exit.DONE;
    }
}
