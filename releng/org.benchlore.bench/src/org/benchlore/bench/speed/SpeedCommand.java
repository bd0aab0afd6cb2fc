// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.concurrent.Callable;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.Folders;

import com.google.gson.GsonBuilder;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Measures how fast the product is. */
@Command(name = "speed", mixinStandardHelpOptions = true,
        description = "Times the product and its peers on invented notes in one run.")
public final class SpeedCommand implements Callable<Integer> {

    private static final int FEWEST_NOTES = 100;

    @Option(names = "--notes", paramLabel = "N", required = true, description = "How many notes.")
    private int notes;

    @Option(names = "--rounds", paramLabel = "N", defaultValue = "5", description = "Rounds (default: 5).")
    private int rounds;

    @Option(names = "--queries", paramLabel = "N", defaultValue = "200", description = "Queries a class (default: 200).")
    private int queries;

    @Option(names = "--updates", paramLabel = "N", defaultValue = "40", description = "Updates a round (default: 40).")
    private int updates;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of the notes (default: 1).")
    private long seed;

    @Option(names = "--no-opening", description = "Leave out opening in fresh processes, which takes longest.")
    private boolean noOpening;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (notes < FEWEST_NOTES || rounds < 1 || queries < 1 || updates < 1) {
            throw new BenchException("Give --notes " + FEWEST_NOTES + " or more, and 1 or more for everything else");
        }
        var settings = new Measured.Settings(notes, rounds, queries, updates, seed, !noOpening);
        var out = spec.commandLine().getOut();
        try (var folders = new Folders()) {
            var measured = new SpeedRun(settings, folders, spec.commandLine().getErr()).run();
            out.println(json ? new GsonBuilder().setPrettyPrinting().create().toJson(new SpeedJson(measured).json())
                    : new SpeedReport(measured).text());
            out.flush();
        }
        return 0;
    }
}
