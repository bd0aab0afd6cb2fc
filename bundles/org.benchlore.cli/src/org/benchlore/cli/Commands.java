// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.PrintWriter;

import org.benchlore.store.LibraryException;
import org.benchlore.workshop.Workshop;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Every command, and what happens when one fails: one line on standard error and an exit code. */
@Command(name = "benchlore", description = "A repair shop's own book of procedures and field notes.",
        mixinStandardHelpOptions = true, version = "Benchlore 0.1.0",
        footer = {"", "Exit codes: 0 done; 1 nothing found, or problems found; 2 bad argument or unknown id;",
            "3 library unreadable."})
final class Commands {

    private final CommandLine line;
    private final PrintWriter err;

    Commands(Workshop workshop, PrintWriter out, PrintWriter err) {
        this.err = err;
        var desk = new Desk(workshop, out, err);
        this.line = new CommandLine(this)
                .addSubcommand(new FindCommand(desk))
                .addSubcommand(new ShowCommand(desk))
                .addSubcommand(new CodeCommand(desk))
                .addSubcommand(new DiagnoseCommand(desk))
                .addSubcommand(new IndexCommand(desk))
                .addSubcommand(new CheckCommand(desk))
                .addSubcommand(new ReviewCommand(desk))
                .addSubcommand(new CompareCommand(desk))
                .addSubcommand(new NewCommand(desk))
                .addSubcommand(new PlanCommand(desk))
                .addSubcommand(new AddingCommand(desk))
                .addSubcommand(new SheetCommand(desk))
                .addSubcommand(new PackCommand(desk))
                .addSubcommand(new TakeCommand(desk))
                .addSubcommand(TorqueCommand.of(desk))
                .setOut(out).setErr(err)
                .setParameterExceptionHandler((e, arguments) -> complain(bad(e), Exit.BAD_ARGUMENT))
                .setExecutionExceptionHandler((e, command, parsed) -> failed(e));
    }

    int run(String... arguments) {
        if (arguments.length == 0) {
            line.usage(line.getOut());
            return Exit.DONE;
        }
        return line.execute(arguments);
    }

    private static String bad(ParameterException e) {
        var command = e.getCommandLine();
        var name = command.getCommandSpec().qualifiedName();
        var help = name + " --help";
        if (e instanceof UnmatchedArgumentException unmatched && !command.getSubcommands().isEmpty()) {
            return "There is no command '" + unmatched.getUnmatched().get(0) + "'"
                    + (name.equals("benchlore") ? "" : " below '" + name + "'") + "; see '" + help + "'";
        }
        return e.getMessage().replaceAll("\\s+", " ") + "; see '" + help + "'";
    }

    private int failed(Exception e) {
        if (e instanceof BadArgument) {
            return complain(e.getMessage(), Exit.BAD_ARGUMENT);
        }
        if (e instanceof LibraryException) {
            return complain(e.getMessage(), Exit.UNREADABLE);
        }
        System.getLogger(Commands.class.getName()).log(System.Logger.Level.ERROR, "A command failed", e);
        return complain("The command failed (" + e + "); set BENCHLORE_LOG=1 and run it again to see more",
                Exit.UNREADABLE);
    }

    private int complain(String what, int exit) {
        err.println("benchlore: " + what.replaceAll("\\s*[\\r\\n]+\\s*", " "));
        err.flush();
        return exit;
    }
}
