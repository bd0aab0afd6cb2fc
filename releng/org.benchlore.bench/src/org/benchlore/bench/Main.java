// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

import org.benchlore.bench.packs.PackCommand;
import org.benchlore.bench.rank.RankCommand;
import org.benchlore.bench.rules.CheckCommand;
import org.benchlore.bench.speed.SpeedCommand;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The bench's command line. Exit 0 measured; 1 something failed on the way; 2 a bad argument or a bad set. */
@Command(name = "bench", mixinStandardHelpOptions = true,
        description = "Measures the product: its search beside plain Lucene and SQLite FTS5 in one run, its rules, its packs.",
        subcommands = {RankCommand.class, SpeedCommand.class, CheckCommand.class, PackCommand.class})
public final class Main {

    private Main() {
    }

    /**
     * Runs a command.
     *
     * @param arguments the words behind {@code releng/bench}
     */
    public static void main(String[] arguments) {
        System.exit(commandLine().execute(arguments));
    }

    /** Returns the command line, which says in one line what it cannot do. */
    static CommandLine commandLine() {
        var line = new CommandLine(new Main());
        line.setExecutionExceptionHandler((failure, at, parsed) -> {
            if (failure instanceof BenchException) {
                at.getErr().println("bench: " + failure.getMessage());
                return CommandLine.ExitCode.USAGE;
            }
            throw failure;
        });
        return line;
    }
}
