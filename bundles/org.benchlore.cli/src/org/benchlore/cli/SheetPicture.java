// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Comparator;
import java.util.Optional;

import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.edit.media.MediaType;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Kind;
import org.benchlore.page.Block.Picture;
import org.benchlore.plan.adding.Adding;
import org.benchlore.store.Row;
import org.benchlore.workshop.OpenLibrary;

/** What was found, in words and as a picture: as given, else from the unit's newest job that is not closed. */
final class SheetPicture {

    private static final String CAPTION = "What was found";

    private final OpenLibrary opened;
    private final String words;
    private final Optional<JobRecord> job;
    private final Optional<byte[]> given;

    SheetPicture(OpenLibrary opened, Adding adding, String words, Path file) throws BadArgument {
        this.opened = opened;
        this.words = words;
        this.job = job(adding);
        this.given = file == null ? Optional.empty() : Optional.of(read(file));
    }

    private static byte[] read(Path file) throws BadArgument {
        try {
            return MediaShelf.clean(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new BadArgument("'" + file + "' cannot be read: name a picture.");
        } catch (MediaException e) {
            throw new BadArgument("'" + file + "': " + e.getMessage());
        }
    }

    private Optional<JobRecord> job(Adding adding) {
        var unit = adding.unit().flatMap(opened.library()::addressOf);
        return opened.library().catalogue().rows(Kind.JOB).filter(row -> unit.isPresent()
                && row.job().flatMap(facts -> facts.unit()).equals(unit) && row.date().isPresent())
                .sorted(Comparator.comparing((Row row) -> row.date().orElseThrow()).reversed()).map(row -> opened.library().top(row.id()))
                .flatMap(Optional::stream).map(JobRecord.class::cast).filter(it -> it.getState() != JobState.CLOSED).findFirst();
    }

    Optional<String> found() {
        return Optional.ofNullable(words).or(() -> job.map(JobRecord::getFinding));
    }

    Optional<Picture> picture() {
        return given.map(bytes -> new Picture("given", CAPTION)).or(() -> job.flatMap(it -> it.getMedia().stream()
                .filter(media -> media.getFile() != null).findFirst()).map(media -> new Picture(media.getFile(),
                        media.getCaption() == null ? CAPTION : media.getCaption())));
    }

    /** The picture itself, so that the sheet is one file; empty if it cannot be shown. */
    Optional<String> data(String file) {
        try {
            var bytes = given.isPresent() ? given.get() : new MediaShelf(opened.library().root()).shown(file);
            return MediaType.of(bytes).map(type -> "data:image/" + word(type) + ";base64," + Base64.getEncoder().encodeToString(bytes));
        } catch (MediaException e) {
            System.getLogger(SheetPicture.class.getName()).log(System.Logger.Level.INFO, "A picture is left out of the sheet", e);
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
