// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.benchlore.check.review.Reviews.Standing;
import org.benchlore.model.Kind;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.benchlore.store.UnknownId;
import org.benchlore.workshop.OpenLibrary;
import org.benchlore.workshop.ReviewDesk;

import com.google.gson.JsonArray;

import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Shows a reviewer what there is to look at, and marks procedures as reviewed. */
@Command(name = "review", description = "Show what was changed in procedures since their review, or mark them as reviewed.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit codes: 0 done; 1 the rules find something, or nothing was to be done;",
            "2 bad argument, unknown id, or something stands against the review; 3 library unreadable."})
final class ReviewCommand implements Callable<Integer> {

    private final Desk desk;

    @Mixin
    private LibraryOption library;

    @Parameters(paramLabel = "ID", arity = "0..*", description = "Ids of procedures.")
    private List<String> ids = List.of();

    @Option(names = "--by", paramLabel = "PERSON", description = "Mark them as reviewed by this person of the shop.")
    private String by;

    @Option(names = "--on", paramLabel = "DAY", converter = Day.class,
            description = "Day of the review as YYYY-MM-DD (default: today).")
    private LocalDate on = LocalDate.now();

    @Option(names = "--sums", description = "Write down the sum of the text of reviewed procedures that have none yet"
            + " (all, or those named), so that a change is seen from now on.")
    private boolean sums;

    /** Reads a day. */
    static final class Day implements ITypeConverter<LocalDate> {

        @Override
        public LocalDate convert(String text) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException("'" + text + "' is no day: write it as 2026-11-25");
            }
        }
    }

    ReviewCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        if (ids.isEmpty() && !sums) {
            throw new BadArgument("Name one or more procedures; 'find TEXT --kind procedure' finds ids");
        }
        if (sums && by != null) {
            throw new BadArgument("--sums is for what was reviewed before, --by for a review now: give one of them");
        }
        try (var open = desk.openAndRemark(library.folder())) {
            return sums ? keepSums(open) : by == null ? look(open) : review(open);
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private static String path(OpenLibrary open, String id) throws BadArgument {
        return open.library().catalogue().byId(id).filter(row -> row.kind() == Kind.PROCEDURE).map(Row::path)
                .orElseThrow(() -> new BadArgument(
                        new UnknownId(open.library().catalogue(), Kind.PROCEDURE).says(id, "procedure")));
    }

    private int look(OpenLibrary open) throws BadArgument {
        var all = new JsonArray();
        boolean isClean = true;
        var text = new ReviewText(desk.out());
        for (var id : ids) {
            var path = path(open, id);
            var look = open.reviews().look(path).orElseThrow(() -> new BadArgument(path + " cannot be read: mend it first"));
            isClean &= look.problems().open().isEmpty();
            if (library.isJson()) {
                all.add(text.json(look));
            } else {
                text.print(look);
            }
        }
        if (library.isJson()) {
            desk.print(all);
        }
        return isClean ? Exit.DONE : Exit.EMPTY;
    }

    /** All are looked for before one is written. */
    private int review(OpenLibrary open) throws BadArgument, LibraryException {
        var reviewer = reviewer(open.reviews());
        for (var id : ids) {
            path(open, id);
        }
        var done = new JsonArray();
        for (var id : ids) {
            open.reviews().review(path(open, id), reviewer.at(), on);
            done.add(id);
            if (!library.isJson()) {
                desk.out().println(id + " is reviewed by " + reviewer.name() + ".");
            }
        }
        if (library.isJson()) {
            desk.print(done);
        }
        return Exit.DONE;
    }

    private ReviewDesk.Reviewer reviewer(ReviewDesk reviews) throws BadArgument {
        var people = reviews.people();
        return people.stream().filter(person -> person.at().id().equals(by) || person.name().equalsIgnoreCase(by)).findFirst()
                .orElseThrow(() -> new BadArgument("There is no '" + by + "' in the shop; there "
                        + (people.isEmpty() ? "is nobody: enter who works here in the shop's file" : "are "
                        + people.stream().map(person -> person.at().id()).collect(Collectors.joining(", ")))));
    }

    private int keepSums(OpenLibrary open) throws BadArgument, LibraryException {
        var paths = new ArrayList<String>();
        for (var id : ids) {
            paths.add(path(open, id));
        }
        if (ids.isEmpty()) {
            open.library().catalogue().rows(Kind.PROCEDURE).map(Row::path).forEach(paths::add);
        }
        var done = new JsonArray();
        for (var path : paths) {
            var standing = open.reviews().standing(path);
            if (standing.filter(one -> one == Standing.REVIEWED_WITHOUT_SUM).isPresent() || !ids.isEmpty()) {
                open.reviews().keepSum(path);
                done.add(path);
            } else if (standing.filter(one -> one == Standing.CHANGED_SINCE).isPresent()) {
                desk.err().println("benchlore: " + path + " was changed since its review: have it reviewed again");
            }
        }
        if (library.isJson()) {
            desk.print(done);
        } else {
            desk.out().println(done.isEmpty() ? "No reviewed procedure lacks its sum." : "Sums written down: " + done.size() + ".");
        }
        return done.isEmpty() ? Exit.EMPTY : Exit.DONE;
    }
}
