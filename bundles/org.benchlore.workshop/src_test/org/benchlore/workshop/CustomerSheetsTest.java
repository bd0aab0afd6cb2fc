// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import javax.imageio.ImageIO;

import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.desk.QuickChange;
import org.benchlore.edit.media.MediaException;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.model.Answer;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Offer;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Figure;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The customer's sheet of a job: its picture, what was offered written into the record, read back for a revised one. */
class CustomerSheetsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path home;

    private OpenLibrary open;
    private CustomerSheets sheets;
    private Adding adding;
    private LoadedFile job;

    @BeforeEach
    void startAJob() throws Exception {
        var workshop = KnownHome.in(home);
        open = workshop.open(workshop.demonstration(), Use.WORK, new NullProgressMonitor());
        sheets = new CustomerSheets(open);
        var request = new PlanRequest("lorry-21", List.of("renew-pto-clutch-pack"), List.of(), List.of(), DAY, Optional.empty());
        adding = open.adder().adding(request, OptionalInt.empty(), open.countingRules());
        job = new PlannedJob(open).start(adding.plan().orElseThrow(), Optional.empty());
    }

    @AfterEach
    void close() {
        open.close();
    }

    private JobRecord record() {
        return (JobRecord) open.library().file(job.path()).flatMap(LoadedFile::root).orElseThrow();
    }

    private static byte[] png(int size) throws Exception {
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }

    private String photograph() throws Exception {
        var stored = new MediaShelf(open.library().root()).add(png(12));
        QuickChange.make(open.sessions(), job.path(), session -> {
            var media = BookFactory.eINSTANCE.createMedia();
            media.setFile(stored.file());
            media.setCaption("Step in the bore");
            return session.edits().inner().add(session.element(), Literals.JOB_RECORD__MEDIA, media, InnerEdits.END).edit();
        });
        return stored.file();
    }

    private SheetWish wish(Optional<SheetPhoto> photo) {
        return new SheetWish(Optional.of("Take it with it."), Optional.of("Plates worn."), photo, List.of(), Optional.empty(),
                Optional.empty());
    }

    @Test
    void thePictureOfTheUnitsOpenJobStandsWithinTheSheetsOwnFile() throws Exception {
        var file = photograph();
        var photo = sheets.job(adding).flatMap(it -> sheets.photos(it).stream().findFirst());
        assertEquals(file, photo.orElseThrow().picture().file());
        var html = sheets.written(sheets.page(adding, wish(photo)), photo, Path.of("sheet.html"));
        assertTrue(html.contains("src=\"data:image/png;base64,") && html.contains("Step in the bore"), html);
        assertFalse(html.contains(file), "nothing is fetched from beside it");
    }

    @Test
    void aPictureThatIsGoneIsLeftOutAndItsWordsStay() throws Exception {
        Files.delete(open.library().root().resolve("media").resolve(photograph()));
        var photo = sheets.photos(record()).stream().findFirst();
        var html = sheets.written(sheets.page(adding, wish(photo)), photo, Path.of("sheet.html"));
        assertFalse(html.contains("data:image"), html);
        assertTrue(html.contains("Step in the bore"), html);
    }

    @Test
    void aPictureThatIsGivenIsNotTakenIntoTheLibrary() throws Exception {
        var given = Files.write(home.resolve("given.png"), png(9));
        var before = pictures();
        var photo = Optional.of(SheetPhoto.given(given));
        assertTrue(sheets.written(sheets.page(adding, wish(photo)), photo, Path.of("sheet.html")).contains("data:image/png"));
        assertEquals(before, pictures());
    }

    private long pictures() throws Exception {
        try (var files = Files.list(open.library().root().resolve("media"))) {
            return files.count();
        }
    }

    @Test
    void aFileThatIsNoPictureIsRefusedByName() throws Exception {
        var text = Files.writeString(home.resolve("list.txt"), "no picture");
        assertTrue(assertThrows(MediaException.class, () -> SheetPhoto.given(text)).getMessage().contains("list.txt"));
    }

    /** 404.16 with 21 in a hundred tax: 404.16 / 1.21 = 334.02. */
    @Test
    void whatIsOfferedIsWrittenIntoTheJobWithoutTaxAndCanBeTakenBack() throws Exception {
        var change = new OfferedWork(open).write(record(), adding, List.of("renew-pto-pack-filter"));
        var actuator = offer("renew-pto-actuator").orElseThrow();
        assertEquals("334.02", actuator.getPrice().toString());
        assertEquals(Answer.OFFERED, actuator.getAnswer());
        var filter = offer("renew-pto-pack-filter").orElseThrow();
        assertEquals(Answer.DECLINED, filter.getAnswer());
        assertEquals(DAY, filter.getOn());
        change.orElseThrow().takeBack();
        assertTrue(record().getOffers().isEmpty());
    }

    @Test
    void aSecondSheetChangesPricesThatNobodyAnsweredAndLeavesTheRest() throws Exception {
        new OfferedWork(open).write(record(), adding, List.of("renew-pto-pack-filter"));
        int count = record().getOffers().size();
        var before = offer("renew-pto-pack-filter").orElseThrow().getPrice();
        var changed = adding.change("renew-pto-actuator", it -> it.with(Figure.EXTRA, new BigDecimal("242")))
                .change("renew-pto-pack-filter", it -> it.with(Figure.EXTRA, new BigDecimal("1")));
        new OfferedWork(open).write(record(), changed, List.of());
        assertEquals(count, record().getOffers().size());
        assertEquals("200.00", offer("renew-pto-actuator").orElseThrow().getPrice().toString());
        assertEquals(before, offer("renew-pto-pack-filter").orElseThrow().getPrice());
        assertEquals(Answer.DECLINED, offer("renew-pto-pack-filter").orElseThrow().getAnswer());
    }

    private Optional<Offer> offer(String procedure) {
        return record().getOffers().stream().filter(offer -> open.library().addressOf(offer.getProcedure())
                .filter(it -> it.id().equals(procedure)).isPresent()).findFirst();
    }

    @Test
    void aSheetOfAnotherUnitIsNoFirstSheet() throws Exception {
        var file = Files.writeString(home.resolve("first.html"), sheets.written(sheets.page(adding, wish(Optional.empty())),
                Optional.empty(), Path.of("first.html")));
        assertEquals(List.of("renew-pto-clutch-pack"), sheets.earlier(file, adding).procedures());
        var other = open.adder().adding(new PlanRequest("lorry-17", List.of("renew-pto-clutch-pack"), List.of(), List.of(), DAY,
                Optional.empty()), OptionalInt.empty(), open.countingRules());
        assertTrue(assertThrows(LibraryException.class, () -> sheets.earlier(file, other)).getMessage().contains("lorry-21"));
    }
}
