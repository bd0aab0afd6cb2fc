// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaType;
import org.benchlore.model.FieldNote;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Kind;
import org.benchlore.page.CustomerSheet;
import org.benchlore.page.EarlierSheet;
import org.benchlore.page.HtmlRenderer;
import org.benchlore.page.Page;
import org.benchlore.page.SheetWords;
import org.benchlore.page.TextRenderer;
import org.benchlore.plan.adding.Adding;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;

/** Makes customer's sheets from what could be added and what people put in, each as one file that stands alone. */
public final class CustomerSheets {

    private static final int WIDTH = 96;

    private final OpenLibrary opened;

    /**
     * Makes it.
     *
     * @param opened the library that the answers come from
     */
    public CustomerSheets(OpenLibrary opened) {
        this.opened = opened;
    }

    /**
     * Finds the job that a sheet belongs to.
     *
     * @param adding what could be added
     * @return the newest job of the unit that is not closed
     */
    public Optional<JobRecord> job(Adding adding) {
        var unit = adding.unit().flatMap(opened.library()::addressOf);
        return opened.library().catalogue().rows(Kind.JOB).filter(row -> unit.isPresent()
                && row.job().flatMap(facts -> facts.unit()).equals(unit) && row.date().isPresent())
                .sorted(Comparator.comparing((Row row) -> row.date().orElseThrow()).reversed()).map(row -> opened.library().top(row.id()))
                .flatMap(Optional::stream).map(JobRecord.class::cast).filter(it -> it.getState() != JobState.CLOSED).findFirst();
    }

    /**
     * Lists the pictures of a job, and of the notes that were written in it.
     *
     * @param job a job
     * @return its own first, each file once
     */
    public List<SheetPhoto> photos(JobRecord job) {
        var seen = new HashSet<String>();
        return Stream.concat(job.getMedia().stream(), notes(job).flatMap(note -> note.getMedia().stream()))
                .filter(media -> media.getFile() != null && seen.add(media.getFile())).map(SheetPhoto::of).toList();
    }

    private Stream<FieldNote> notes(JobRecord job) {
        var library = opened.library();
        var address = library.addressOf(job);
        return address.isEmpty() ? Stream.empty() : library.catalogue().referringTo(address.get().path())
                .map(row -> library.top(row.id())).flatMap(Optional::stream).filter(FieldNote.class::isInstance)
                .map(FieldNote.class::cast).filter(note -> library.addressOf(note.getJob()).equals(address));
    }

    /**
     * Makes the page.
     *
     * @param adding the plan with what could be added
     * @param wish what somebody puts on it
     * @return one page
     * @throws IllegalArgumentException if there is no plan, in one sentence
     */
    public Page page(Adding adding, SheetWish wish) {
        var more = wish.first().flatMap(first -> opened.adder().more(adding, first.procedures()));
        return CustomerSheet.of(opened.library(), adding, new SheetWords(wish.advice(), wish.found(),
                wish.photo().map(SheetPhoto::picture), wish.declined(), wish.validUntil(), wish.first(), more));
    }

    /**
     * Reads an earlier sheet back.
     *
     * @param file a sheet as it was saved
     * @param adding what the new sheet is made from
     * @return what it said
     * @throws LibraryException if it is no sheet of this unit, in one sentence
     */
    public EarlierSheet earlier(Path file, Adding adding) throws LibraryException {
        var sheet = EarlierSheet.read(text(file)).orElseThrow(() -> new LibraryException("'" + file
                + "' holds no line 'Our reference': name a sheet that this program wrote."));
        if (!sheet.subject().equals(adding.request().subject())) {
            throw new LibraryException("'" + file + "' is a sheet for '" + sheet.subject() + "', not for '"
                    + adding.request().subject() + "': name the first sheet of this one.");
        }
        return sheet;
    }

    private static String text(Path file) throws LibraryException {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new LibraryException("'" + file + "' cannot be read: name the first sheet.", e);
        }
    }

    /**
     * Tells whether a sheet can be written to a file of this name.
     *
     * @param file a file
     * @return whether it ends in .txt or .html
     */
    public static boolean isWritten(Path file) {
        return isText(file) || ending(file).endsWith(".html");
    }

    private static boolean isText(Path file) {
        return ending(file).endsWith(".txt");
    }

    private static String ending(Path file) {
        return file.getFileName() == null ? "" : file.getFileName().toString().toLowerCase(Locale.ROOT);
    }

    /**
     * Writes a page as the file's name says.
     *
     * @param page a sheet
     * @param photo its picture
     * @param file ends in .txt or .html
     * @return the content of the file
     */
    public String written(Page page, Optional<SheetPhoto> photo, Path file) {
        return isText(file) ? new TextRenderer(WIDTH).render(page) + "\n"
                : new HtmlRenderer(target -> Optional.empty(), name -> photo.flatMap(this::data)).renderOnePage(page);
    }

    /** The picture itself, so that the sheet is one file; empty if it cannot be shown. */
    private Optional<String> data(SheetPhoto photo) {
        try {
            var bytes = photo.bytes(opened.library().root());
            return MediaType.of(bytes).map(type -> "data:image/" + word(type) + ";base64,"
                    + Base64.getEncoder().encodeToString(bytes));
        } catch (MediaException e) {
            System.getLogger(CustomerSheets.class.getName()).log(System.Logger.Level.INFO, "A picture is left out of the sheet", e);
            return Optional.empty();
        }
    }

    private static String word(MediaType type) {
        return switch (type.ending()) {
            case "jpg" -> "jpeg";
            case "svg" -> "svg+xml";
            default -> type.ending();
        };
    }
}
