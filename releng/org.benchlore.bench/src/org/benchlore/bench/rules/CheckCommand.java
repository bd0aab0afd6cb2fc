// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rules;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.Folders;
import org.benchlore.bench.ManyProcedures;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Measures how long it takes to check a large library by the rules. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = "Times the check of a library made large: everything, and after one saved change.")
public final class CheckCommand implements Callable<Integer> {

    @Option(names = "--library", paramLabel = "DIR", defaultValue = "procedures",
            description = "The library whose procedures are copied (default: procedures).")
    private Path library;

    @Option(names = "--procedures", paramLabel = "N", defaultValue = "10000",
            description = "How many procedures (default: 10000).")
    private int procedures;

    @Option(names = "--rounds", paramLabel = "N", defaultValue = "9", description = "Full checks (default: 9).")
    private int rounds;

    @Option(names = "--changes", paramLabel = "N", defaultValue = "200", description = "Saved changes (default: 200).")
    private int changes;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (procedures < 1 || rounds < 1 || changes < 1) {
            throw new BenchException("Give 1 or more everywhere");
        }
        var out = spec.commandLine().getOut();
        try (var folders = new Folders()) {
            var copy = folders.of("library");
            new ManyProcedures(library, copy).write(procedures);
            new CheckRun(copy, folders.of("cache"), line -> {
                out.println(line);
                out.flush();
            }).run(rounds, changes);
        }
        return 0;
    }
}
