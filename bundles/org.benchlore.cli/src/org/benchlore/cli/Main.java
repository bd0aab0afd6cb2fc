// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;

import org.benchlore.workshop.Places;
import org.benchlore.workshop.Workshop;

/** Starts the command line from a plain class path. */
public final class Main {

    private static final String LOG_VARIABLE = "BENCHLORE_LOG";

    private Main() {
    }

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param arguments command and options
     */
    public static void main(String[] arguments) {
        var level = System.getenv(LOG_VARIABLE) == null ? Level.OFF : Level.ALL;
        Logger.getLogger("").setLevel(level);
        var out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), false);
        var err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
        int exit = new Commands(new Workshop(Places.ofUser()), out, err).run(arguments);
        out.flush();
        err.flush();
        System.exit(exit);
    }
}
