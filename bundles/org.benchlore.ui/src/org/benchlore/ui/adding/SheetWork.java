// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.io.ByteArrayInputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.media.MediaException;
import org.benchlore.page.EarlierSheet;
import org.benchlore.page.Page;
import org.benchlore.store.LibraryException;
import org.benchlore.workshop.CustomerSheets;
import org.benchlore.workshop.SheetPhoto;
import org.benchlore.workshop.SheetWish;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;

/** Makes the sheet from what stands in the fields. Runs beside the window's thread. */
final class SheetWork {

    private final SheetBasis basis;
    private final CustomerSheets sheets;
    private Optional<String> problem = Optional.empty();

    private SheetWork(SheetBasis basis) {
        this.basis = basis;
        this.sheets = new CustomerSheets(basis.opened().library());
    }

    /**
     * A sheet.
     *
     * @param page how it looks
     * @param photo its picture
     * @param images the picture as it is drawn, by file
     * @param problem what of the fields could not be taken, and what to do
     */
    record Made(Page page, Optional<SheetPhoto> photo, Map<String, ImageData> images, Optional<String> problem) {
    }

    static Made of(SheetBasis basis, SheetInput input) {
        return new SheetWork(basis).made(input);
    }

    private Made made(SheetInput input) {
        var photo = photo(input);
        var wish = new SheetWish(words(input.advice()), words(input.found()), photo, input.declined(), day(input.validUntil()),
                first(input.first()));
        try {
            return new Made(sheets.page(basis.adding(), wish), photo, photo.map(this::images).orElse(Map.of()), problem);
        } catch (IllegalArgumentException e) {
            return new Made(new Page("", List.of()), photo, Map.of(), Optional.of(e.getMessage()));
        }
    }

    private static Optional<String> words(String text) {
        return Optional.of(text.strip().replaceAll("\\s+", " ")).filter(it -> !it.isEmpty());
    }

    /** A file that somebody names goes before the job's. */
    private Optional<SheetPhoto> photo(SheetInput input) {
        if (input.photoFile().isBlank()) {
            return input.photo() < 0 ? Optional.empty() : Optional.of(basis.photos().get(input.photo()));
        }
        try {
            return Optional.of(SheetPhoto.given(Path.of(input.photoFile().strip())));
        } catch (MediaException | InvalidPathException e) {
            problem = Optional.of(e.getMessage());
            return Optional.empty();
        }
    }

    private Optional<LocalDate> day(String typed) {
        try {
            return words(typed).map(LocalDate::parse);
        } catch (DateTimeParseException e) {
            problem = Optional.of(NLS.bind(Messages.noDay, typed.strip()));
            return Optional.empty();
        }
    }

    private Optional<EarlierSheet> first(String file) {
        try {
            return file.isBlank() ? Optional.empty() : Optional.of(sheets.earlier(Path.of(file.strip()), basis.adding()));
        } catch (LibraryException | InvalidPathException e) {
            problem = Optional.of(e.getMessage());
            return Optional.empty();
        }
    }

    private Map<String, ImageData> images(SheetPhoto photo) {
        try {
            var bytes = photo.bytes(basis.opened().library().library().root());
            return Map.of(photo.picture().file(), new ImageData(new ByteArrayInputStream(bytes)));
        } catch (MediaException | SWTException | IllegalArgumentException e) {
            problem = Optional.of(NLS.bind(Messages.photoNotShown, photo.picture().file()));
            return Map.of();
        }
    }
}
