// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.measure.Amount;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.page.JobCardPage;
import org.benchlore.page.PlanPage;
import org.benchlore.page.TextRenderer;
import org.benchlore.page.drawing.AccessDrawing;
import org.benchlore.plan.Plan;
import org.benchlore.plan.search.PlanException;
import org.benchlore.workshop.OpenLibrary;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

    @Mixin
    private PlanArguments arguments;

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
            NewFile.write(card, () -> new HtmlRenderer().render(JobCardPage.of(opened.library(), plan)));
            NewFile.write(picture, () -> AccessDrawing.of(plan).svg());
            return plan.items().isEmpty() ? Exit.EMPTY : Exit.DONE;
        }
    }

    private Plan plan(OpenLibrary opened) throws BadArgument {
        try {
            return opened.planner().plan(arguments.request(fixed()));
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
}
