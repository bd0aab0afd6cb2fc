// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.measure.Amount;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.page.JobCardPage;
import org.benchlore.page.PlanPage;
import org.benchlore.page.TextRenderer;
import org.benchlore.page.drawing.AccessDrawing;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.search.PlanException;
import org.benchlore.workshop.OpenLibrary;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans one strip for all that is to be done, from where the machine stands. */
@Command(name = "plan", description = "Plan one strip for all that is to be done, from where the machine stands.",
        mixinStandardHelpOptions = true,
        footer = {"", "  plan lorry-17 renew-pto-clutch-pack renew-pto-actuator",
            "  plan lorry-17 renew-pto-actuator --open pto-unit-out --done save-pto-values --done renew-pto-clutch-pack"})
final class PlanCommand implements Callable<Integer> {

    private static final int WIDTH = 110;

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(index = "0", paramLabel = "MACHINE|UNIT", description = "Id of a machine or of a unit.")
    private String subject;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "PROCEDURE", description = "Ids of what is to be done.")
    private List<String> procedures;

    @Option(names = "--open", paramLabel = "ACCESS", description = "An access that is open now; may be repeated.")
    private List<String> open = List.of();

    @Option(names = "--done", paramLabel = "PROCEDURE", description = "A procedure that has been done; may be repeated.")
    private List<String> done = List.of();

    @Option(names = "--on", paramLabel = "DAY", description = "The day of the plan, such as 2026-11-25 (default: today).")
    private LocalDate day = LocalDate.now();

    @Option(names = "--labour", paramLabel = "AMOUNT", description = "Price agreed for the labour of the whole job, without tax.")
    private String labour;

    @Option(names = "--card", paramLabel = "FILE", description = "Write the job card to a new HTML file.")
    private Path card;

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the accesses to a new SVG file.")
    private Path picture;

    PlanCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        try (var opened = desk.openAndRemark(library.folder())) {
            var plan = plan(opened);
            if (library.isJson()) {
                desk.print(new PlanJson().of(plan));
            } else {
                desk.out().println(new TextRenderer(WIDTH).render(PlanPage.of(opened.library(), plan)));
            }
            write(card, () -> new HtmlRenderer().render(JobCardPage.of(opened.library(), plan)));
            write(picture, () -> AccessDrawing.of(plan).svg());
            return plan.items().isEmpty() ? Exit.EMPTY : Exit.DONE;
        }
    }

    private Plan plan(OpenLibrary opened) throws BadArgument {
        try {
            return opened.planner().plan(new PlanRequest(subject, procedures, open, done, day, fixed()));
        } catch (PlanException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private Optional<Amount> fixed() throws BadArgument {
        try {
            return Optional.ofNullable(labour).map(Amount::parse);
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    static void write(Path file, java.util.function.Supplier<String> text) throws BadArgument {
        if (file == null) {
            return;
        }
        if (Files.exists(file)) {
            throw new BadArgument("'" + file + "' is there already and is not written over: name a new file.");
        }
        try {
            Files.writeString(file, text.get());
        } catch (IOException e) {
            throw new BadArgument("'" + file + "' cannot be written: name a file in a folder that is there and may be written"
                    + " to.");
        }
    }
}
