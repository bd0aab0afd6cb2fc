// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.ui.page.PageOpener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The minute note by keyboard: filled in, proposed, with photos, left and gone on with, saved and taken back. */
class MinuteNoteTest {

    private static final Address JOB = Address.parse("jobs/2026/job-2026-clutch-pack-and-actuator-lorry-14-h6r2.xmi"
            + "#job-2026-clutch-pack-and-actuator-lorry-14-h6r2");

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
    }

    @AfterEach
    void close() throws Exception {
        if (window.has("note.text")) {
            window.find("note.text", Text.class).getShell().close();
        }
        EditDriver.page().closeAllEditors(false);
        library.close();
    }

    private void page(Address address, String words) {
        new PageOpener(EditDriver.page(), LibraryCopy.session()).open(address);
        window.waitUntil("the page is there", () -> window.has("page.text")
                && window.find("page.text", StyledText.class).getText().contains(words));
        window.focus(window.find("page.text", StyledText.class));
    }

    private Text begin() {
        window.pressLetter('n', SWT.CTRL, SWT.SHIFT);
        var text = window.find("note.text", Text.class);
        window.waitUntil("the dialog has the cursor", text::isFocusControl);
        return text;
    }

    private Button chip(int number) {
        return window.find("note.chip." + number, Button.class);
    }

    private String written() throws IOException {
        try (var files = Files.walk(library.file("notes/" + java.time.LocalDate.now().getYear()))) {
            var file = files.filter(path -> path.toString().contains("zzwibble")).findFirst();
            return file.isPresent() ? Files.readString(file.get()) : "";
        }
    }

    private void save(String words) {
        window.press(SWT.CR, SWT.CTRL);
        window.waitUntil("its page is there", () -> !window.has("note.text") && window.has("page.text")
                && window.find("page.text", StyledText.class).getText().contains(words));
    }

    private void put(Object content, Transfer transfer) {
        var clipboard = new Clipboard(Display.getCurrent());
        clipboard.setContents(new Object[] {content}, new Transfer[] {transfer});
        clipboard.dispose();
    }

    private Table photos(int count) {
        window.waitUntil("there are photos", () -> window.has("note.photos")
                && window.find("note.photos", Table.class).getItemCount() == count);
        return window.find("note.photos", Table.class);
    }

    private static ImageData photo() {
        var data = new ImageData(120, 80, 24, new PaletteData(0xff0000, 0xff00, 0xff));
        for (int x = 0; x < 120; x++) {
            for (int y = 0; y < 80; y++) {
                data.setPixel(x, y, 0x406080);
            }
        }
        return data;
    }

    @Test
    void onAJobsPageItsUnitMachineAndCodesAreFilledInAndOneIsTakenOutByItsKey() throws Exception {
        page(JOB, "Lorry 14");
        begin();
        assertTrue(window.find("note.invented", Label.class).getText().contains("Invented"));
        assertEquals(List.of(true, true, true, true), List.of(chip(1).getSelection(), chip(2).getSelection(),
                chip(3).getSelection(), chip(4).getSelection()));
        window.type("zzwibble when wet");
        window.pressLetter('4', SWT.ALT);
        window.waitUntil("the code is out", () -> !chip(4).getSelection());
        save("zzwibble when wet");
        assertTrue(written().contains("units/lorry-14.xmi#lorry-14"), written());
        assertFalse(written().contains("code-4c09"), written());
    }

    @Test
    void whatTheTextSpeaksOfIsProposedAndAcceptedByOneKey() throws Exception {
        window.focus(window.find("tree.filter", Control.class));
        var text = begin();
        window.type("zzwibble with p0882 again");
        window.waitUntil("the code is proposed", () -> window.has("note.chip.1") && chip(1).getText().contains("P0882"));
        assertFalse(chip(1).getSelection());
        window.pressLetter('1', SWT.ALT);
        window.waitUntil("it is in", () -> chip(1).getSelection());
        assertTrue(text.isFocusControl());
        assertEquals("zzwibble with p0882 again", text.getText());
        window.screenshot("minute-note");
        save("zzwibble with p0882");
        assertTrue(written().contains("codes/p0882.xmi#p0882"), written());
    }

    @Test
    void aPastedPhotoIsTurnedPointedAtCaptionedAndShownOnThePage() throws Exception {
        window.focus(window.find("tree.filter", Control.class));
        var text = begin();
        window.type("zzwibble at the bore");
        put(photo(), ImageTransfer.getInstance());
        window.pressLetter('v', SWT.CTRL);
        var photos = photos(1);
        window.focus(photos, text.getShell());
        window.pressLetter('r');
        window.workFor(600);
        window.pressLetter('a');
        window.find("arrow.canvas", Control.class);
        window.press(SWT.ARROW_LEFT);
        window.press(SWT.CR);
        window.waitUntil("the arrow is taken over", () -> !window.has("arrow.canvas"));
        window.workFor(600);
        window.focus(window.find("note.photo.caption", Text.class), text.getShell());
        window.type("the step");
        window.screenshot("minute-note-photo");
        save("the step");
        var file = written().replaceAll("(?s).*<media\\s+file=\"([^\"]+)\".*", "$1");
        var kept = new ImageData(library.file("media/" + file).toString());
        assertEquals(List.of(80, 120), List.of(kept.width, kept.height));
        try (var files = Files.list(library.file("media"))) {
            assertEquals(1, files.filter(path -> path.toString().endsWith(".png")).count(), "what was tried out is gone");
        }
        window.screenshot("minute-note-page");
    }

    @Test
    void aFileThatIsNoPictureIsRefusedWithWhatToDoAndNothingIsLost() throws Exception {
        var file = Files.writeString(library.file("zz.png"), "no picture at all");
        window.focus(window.find("tree.filter", Control.class));
        var text = begin();
        window.type("zzwibble");
        put(new String[] {file.toString()}, FileTransfer.getInstance());
        window.find("note.photo.paste", Button.class).notifyListeners(SWT.Selection, null);
        var said = window.find("note.problem", Label.class);
        window.waitUntil("it says why", () -> said.getText().startsWith("This is no picture that can be kept here: choose"));
        assertEquals("zzwibble", text.getText());
    }

    @Test
    void escapeLeavesTheNoteAndTheSameKeyGoesOnWithIt() {
        window.focus(window.find("tree.filter", Control.class));
        begin();
        window.type("zzwibble half");
        window.press(SWT.ESC);
        window.waitUntil("the dialog is gone", () -> !window.has("note.text"));
        window.focus(window.find("tree.filter", Control.class));
        assertEquals("zzwibble half", begin().getText());
        window.find("note.drop", Button.class).notifyListeners(SWT.Selection, null);
        window.waitUntil("the dialog is gone", () -> !window.has("note.text"));
        assertTrue(EditDriver.editing().sessions().orElseThrow().all().isEmpty(), "nothing is left to go on with");
    }

    @Test
    void undoTakesASavedNoteOutOfTheLibraryAndBackIntoTheDialog() throws Exception {
        window.focus(window.find("tree.filter", Control.class));
        begin();
        window.type("zzwibble too soon");
        save("zzwibble too soon");
        window.focus(window.find("page.text", StyledText.class));
        window.pressLetter('z', SWT.CTRL);
        assertEquals("zzwibble too soon", window.find("note.text", Text.class).getText());
        assertEquals("", written());
    }
}
