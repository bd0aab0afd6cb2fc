// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;

import org.benchlore.check.review.PackEntry;
import org.benchlore.check.review.PackRegister;
import org.benchlore.model.Address;
import org.benchlore.store.Hash;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.page.PageEditor;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A procedure is reviewed by another person, withdrawn, and compared with what it was. */
class ReviewTest {

    private static final String ID = "renew-pto-actuator";
    private static final String FILE = "procedures/" + ID + ".xmi";
    private static final Address ODA = new Address("shop.xmi", "oda-brekkan");

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;

    /** The procedure is reviewed, then somebody changes a torque and a page shows it. */
    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        opened().reviews().review(FILE, ODA, LocalDate.of(2026, 11, 20));
        write(text().replace("torque=\"22 N·m\"", "torque=\"24 N·m\""));
        new PageOpener(EditDriver.page(), LibraryCopy.session()).open(new Address(FILE, ID));
        window.waitUntil("the page is open", () -> EditDriver.page().getActiveEditor() instanceof PageEditor);
        window.activate();
    }

    @AfterEach
    void close() throws Exception {
        EditDriver.page().closeAllEditors(false);
        library.close();
    }

    private static OpenLibrary opened() {
        return LibraryCopy.session().current().orElseThrow().library();
    }

    private String text() throws Exception {
        return Files.readString(library.file(FILE));
    }

    private void write(String words) throws Exception {
        Files.writeString(library.file(FILE), words);
        var hash = Hash.of(Files.readAllBytes(library.file(FILE)));
        LibraryCopy.session().refresh();
        window.waitUntil("it was taken in", () -> opened().library().catalogue().entry(FILE)
                .filter(entry -> entry.hash().equals(hash)).isPresent());
    }

    private static void command(String name) {
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class)
                    .executeCommand("org.benchlore.ui.review." + name, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }

    private void choose(String name) {
        var by = window.find("review.by", Combo.class);
        by.select(by.indexOf(name));
        by.notifyListeners(SWT.Selection, null);
    }

    private Button button(String id) {
        return window.find(id, Button.class);
    }

    private String label(String id) {
        return window.find(id, Label.class).getText();
    }

    private void looked() {
        window.waitUntil("it was looked through", () -> window.find("review.changes", Text.class).getText().contains("\u2022"));
    }

    @Test
    void whatChangedIsToldAndTheAuthorIsRefused() {
        command("review");
        looked();
        var changes = window.find("review.changes", Text.class).getText();
        assertTrue(changes.startsWith("\u2022 tightening torque of") && changes.endsWith("from 22 to 24 N·m"), changes);
        assertTrue(label("review.head").contains("changed since the review of 2026-11-20"), label("review.head"));
        assertFalse(button("review.ok").isEnabled());
        choose("Jory Pask");
        assertEquals("The author cannot review it: have somebody else do it.", label("review.against"));
        assertFalse(button("review.ok").isEnabled());
        button("review.ok").getShell().close();
    }

    @Test
    void whatStandsAsReviewedNeedsNoCopyToSayThatNothingChanged() {
        new PageOpener(EditDriver.page(), LibraryCopy.session()).open(new Address("procedures/leak-check-pto.xmi", "leak-check-pto"));
        window.waitUntil("its page is open", () -> EditDriver.page().getActiveEditor().getTitle().startsWith("Check the take-off"));
        command("review");
        window.waitUntil("it was looked through", () -> window.find("review.changes", Text.class).getText().equals("Nothing was changed."));
        button("review.ok").getShell().close();
    }

    @Test
    void anotherPersonReviewsItAndOneKeyTakesThatBack() throws Exception {
        var before = text();
        var hash = Hash.of(Files.readAllBytes(library.file(FILE)));
        command("review");
        looked();
        choose("Tamsin Orle");
        assertTrue(button("review.ok").isEnabled(), label("review.against"));
        button("review.ok").notifyListeners(SWT.Selection, null);
        assertTrue(text().contains("shop.xmi#tamsin-orle"), text());
        assertEquals(List.of(), opened().reviews().look(FILE).orElseThrow().since().orElseThrow().sentences());
        window.activate();
        window.workFor(300);
        window.pressLetter('z', SWT.MOD1);
        window.waitUntil("it was taken back", () -> opened().library().catalogue().entry(FILE)
                .filter(entry -> entry.hash().equals(hash)).isPresent());
        assertEquals(before, text());
    }

    @Test
    void whatTheRulesFindStandsAgainstIt() throws Exception {
        write(text().replace("torque=\"24 N·m\"", "torque=\"240 N·m\""));
        command("review");
        looked();
        choose("Tamsin Orle");
        var problems = window.find("review.problems", Text.class).getText();
        assertTrue(problems.contains("Error, step 8"), problems);
        assertTrue(label("review.against").contains("240 N·m"), label("review.against"));
        assertFalse(button("review.ok").isEnabled());
        button("review.ok").getShell().close();
    }

    @Test
    void itIsWithdrawnForAReasonAndThePacksAreNamed() throws Exception {
        PackRegister.in(library.file("")).record(new PackEntry(LocalDate.of(2026, 11, 21), "Pack for Ines", "/stick/pack",
                List.of(ID + "@3")));
        command("withdraw");
        assertFalse(button("withdraw.ok").isEnabled());
        assertEquals("\u2022 2026-11-21: Pack for Ines with revision 3, written to /stick/pack",
                window.find("withdraw.packs", Text.class).getText());
        window.find("withdraw.reason", Text.class).setText("A near miss on lorry 17");
        successor("teach in the power take-off engagement");
        button("withdraw.ok").notifyListeners(SWT.Selection, null);
        assertTrue(text().contains("status=\"WITHDRAWN\"") && text().contains("A near miss on lorry 17"), text());
        assertTrue(text().contains("teach-in-pto-engagement.xmi#teach-in-pto-engagement"), text());
        command("reopen");
        assertFalse(text().contains("WITHDRAWN"), text());
    }

    private void successor(String words) {
        var field = window.find("withdraw.successor", Text.class);
        window.focus(field, field.getShell());
        field.setText(words);
        window.waitUntil("one is found", () -> window.has("withdraw.successor.choices")
                && window.find("withdraw.successor.choices", Table.class).getItemCount() == 1);
        window.press(SWT.CR);
        window.waitUntil("it is taken", () -> label("withdraw.instead").startsWith("Followed instead: "));
    }

    @Test
    void itIsComparedWithTheReviewedCopyAnotherOneAndAFile() throws Exception {
        command("compare");
        window.waitUntil("it was compared", () -> label("compare.head").contains("differs in one thing from"));
        assertTrue(window.find("compare.differences", Text.class).getText().endsWith("from 22 to 24 N·m"));
        assertFalse(button("compare.saved").isEnabled());
        var other = window.find("compare.other", Text.class);
        window.focus(other, other.getShell());
        other.setText("renew clutch pack");
        window.waitUntil("it is found", () -> window.has("compare.other.choices"));
        window.press(SWT.CR);
        window.waitUntil("it was compared", () -> label("compare.head").matches("(?s).*differs in \\d{2,} things from.*"));
        other.getShell().close();
    }

    @Test
    void aKeyAsksForTheReview() {
        window.pressLetter('r', SWT.MOD1, SWT.MOD2);
        looked();
        button("review.ok").getShell().close();
    }

    @Test
    void aKeyAsksForTheComparison() {
        window.pressLetter('c', SWT.MOD1, SWT.MOD2);
        window.waitUntil("it was compared", () -> label("compare.head").contains("differs in one thing from"));
        window.find("compare.other", Text.class).getShell().close();
    }

    @Test
    void theDialogsAreLegibleInLightAndDark() {
        pictures(Appearance.Mode.LIGHT, "light");
        pictures(Appearance.Mode.DARK, "dark");
    }

    private void pictures(Appearance.Mode mode, String name) {
        var appearance = PlatformUI.getWorkbench().getService(Appearance.class);
        try {
            appearance.choose(mode);
            window.workFor(500);
            command("review");
            looked();
            choose("Jory Pask");
            window.screenshot("review-" + name);
            button("review.ok").getShell().close();
            command("withdraw");
            window.screenshot("withdraw-" + name);
            button("withdraw.ok").getShell().close();
            command("compare");
            window.waitUntil("it was compared", () -> label("compare.head").contains("differs in one thing from"));
            window.screenshot("compare-" + name);
            window.find("compare.other", Text.class).getShell().close();
        } finally {
            appearance.choose(Appearance.Mode.LIGHT);
        }
    }
}
