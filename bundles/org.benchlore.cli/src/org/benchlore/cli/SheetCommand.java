// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.benchlore.edit.media.MediaException;
import org.benchlore.model.JobRecord;
import org.benchlore.page.EarlierSheet;
import org.benchlore.page.Page;
import org.benchlore.plan.adding.Adding;
import org.benchlore.store.LibraryException;
import org.benchlore.workshop.CustomerSheets;
import org.benchlore.workshop.OpenLibrary;
import org.benchlore.workshop.SheetPhoto;
import org.benchlore.workshop.SheetWish;

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

    @Option(names = "--valid-until", paramLabel = "DAY", description = "Until when its prices hold (default: as on the shop's page).")
    private LocalDate validUntil;

    @Option(names = "--revised-from", paramLabel = "FILE", description = "The sheet that this one takes the place of.")
    private Path first;

    SheetCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        if (!CustomerSheets.isWritten(out)) {
            throw new BadArgument("'" + out + "' is neither text nor HTML: end it in .txt or .html.");
        }
        try (var opened = desk.openAndRemark(library.folder())) {
            var adding = task.adding(opened);
            var sheets = new CustomerSheets(opened);
            var photo = photo(sheets, adding);
            var page = page(opened, sheets, adding, photo);
            NewFile.write(out, () -> sheets.written(page, photo, out));
            if (library.isJson()) {
                desk.print(new AddingJson().of(adding));
            }
            return Exit.DONE;
        }
    }

    private Optional<SheetPhoto> photo(CustomerSheets sheets, Adding adding) throws BadArgument {
        try {
            return photo == null ? sheets.job(adding).flatMap(job -> sheets.photos(job).stream().findFirst())
                    : Optional.of(SheetPhoto.given(photo));
        } catch (MediaException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private Page page(OpenLibrary opened, CustomerSheets sheets, Adding adding, Optional<SheetPhoto> picture) throws BadArgument {
        for (var id : declined) {
            if (opened.library().top(id).isEmpty() && adding.proposal(id).isEmpty()) {
                throw new BadArgument("There is no procedure '" + id + "' that could be declined; 'adding' lists what is offered.");
            }
        }
        var words = Optional.ofNullable(found).or(() -> sheets.job(adding).map(JobRecord::getFinding));
        try {
            return sheets.page(adding, new SheetWish(Optional.ofNullable(advice), words, picture, declined,
                    Optional.ofNullable(validUntil), earlier(sheets, adding)));
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage() + " " + String.join(" ", adding.remarks()));
        }
    }

    private Optional<EarlierSheet> earlier(CustomerSheets sheets, Adding adding) throws BadArgument {
        try {
            return first == null ? Optional.empty() : Optional.of(sheets.earlier(first, adding));
        } catch (LibraryException e) {
            throw new BadArgument(e.getMessage());
        }
    }
}
