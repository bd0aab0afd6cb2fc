// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.page.CustomerSheet;
import org.benchlore.page.EarlierSheet;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.page.Page;
import org.benchlore.page.SheetWords;
import org.benchlore.page.TextRenderer;
import org.benchlore.plan.adding.Adding;
import org.benchlore.workshop.OpenLibrary;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the customer's sheet. */
@Command(name = "sheet", description = "Write the one page that the customer decides by, as text (.txt) or HTML (.html).",
        mixinStandardHelpOptions = true, footer = {"", "  sheet lorry-17 renew-pto-clutch-pack --out sheet.html"
                + " --advice \"New actuator with it: 3 of about 40 would not learn in\"",
            "  sheet lorry-17 renew-pto-clutch-pack renew-pto-actuator --open pto-unit-opened --done save-pto-values"
                + " --revised-from sheet.html --out revised.html"})
final class SheetCommand implements Callable<Integer> {

    private static final int WIDTH = 96;

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Mixin
    private AddingTask task;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "A new file that ends in .txt or .html.")
    private Path out;

    @Option(names = "--advice", paramLabel = "TEXT", description = "What the shop advises and why; nothing is put in by itself.")
    private String advice;

    @Option(names = "--declined", paramLabel = "PROCEDURE", description = "Offered work that was declined; may be repeated.")
    private List<String> declined = List.of();

    @Option(names = "--found", paramLabel = "TEXT", description = "What was found (default: the open job's finding).")
    private String found;

    @Option(names = "--photo", paramLabel = "FILE", description = "Picture of it (default: the open job's first picture).")
    private Path photo;

    @Option(names = "--revised-from", paramLabel = "FILE", description = "The sheet that this one takes the place of.")
    private Path first;

    SheetCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        var name = out.getFileName().toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".txt") && !name.endsWith(".html")) {
            throw new BadArgument("'" + out + "' is neither text nor HTML: end it in .txt or .html.");
        }
        try (var opened = desk.openAndRemark(library.folder())) {
            var adding = task.adding(opened);
            var picture = new SheetPicture(opened, adding, found, photo);
            var page = page(opened, adding, picture);
            PlanCommand.write(out, () -> name.endsWith(".txt") ? new TextRenderer(WIDTH).render(page) + "\n"
                    : new HtmlRenderer(target -> Optional.empty(), picture::data).renderOnePage(page));
            if (library.isJson()) {
                desk.print(new AddingJson().of(adding));
            }
            return Exit.DONE;
        }
    }

    private Page page(OpenLibrary opened, Adding adding, SheetPicture picture) throws BadArgument {
        var earlier = earlier(adding);
        var more = earlier.isEmpty() ? Optional.<java.math.BigDecimal>empty()
                : opened.adder().more(adding, earlier.get().procedures());
        for (var id : declined) {
            if (opened.library().top(id).isEmpty() && adding.proposal(id).isEmpty()) {
                throw new BadArgument("There is no procedure '" + id + "' that could be declined; 'adding' lists what is offered.");
            }
        }
        try {
            return CustomerSheet.of(opened.library(), adding, new SheetWords(Optional.ofNullable(advice), picture.found(),
                    picture.picture(), declined, earlier, more));
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage() + " " + String.join(" ", adding.remarks()));
        }
    }

    private Optional<EarlierSheet> earlier(Adding adding) throws BadArgument {
        if (first == null) {
            return Optional.empty();
        }
        var sheet = EarlierSheet.read(text()).orElseThrow(() -> new BadArgument("'" + first
                + "' holds no line 'Our reference': name a sheet that 'sheet' wrote."));
        if (!sheet.subject().equals(adding.request().subject())) {
            throw new BadArgument("'" + first + "' is a sheet for '" + sheet.subject() + "', not for '"
                    + adding.request().subject() + "': name the first sheet of this one.");
        }
        return Optional.of(sheet);
    }

    private String text() throws BadArgument {
        try {
            return Files.readString(first);
        } catch (IOException e) {
            throw new BadArgument("'" + first + "' cannot be read: name the first sheet.");
        }
    }
}
