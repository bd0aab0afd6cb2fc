// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

import org.benchlore.pack.PackRequest;
import org.benchlore.pack.Packing.Form;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.pack.PackAction;
import org.benchlore.ui.pack.TakeAction;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PackTest {

    private static final String PROCEDURE = "renew-pto-actuator";

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy copy;

    private Path scratch;

    @BeforeEach
    void open() throws Exception {
        scratch = Files.createTempDirectory("benchlore-packs");
        copy = LibraryCopy.open(window);
    }

    @AfterEach
    void close() throws Exception {
        for (var shell : window.shell().getDisplay().getShells()) {
            if (shell.getParent() == window.shell() && !shell.isDisposed()) {
                shell.close();
            }
        }
        PlatformUI.getWorkbench().getService(Appearance.class).choose(Appearance.Mode.LIGHT);
        copy.close();
        try (var files = Files.walk(scratch)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static OpenLibrary library() {
        return LibraryCopy.session().current().orElseThrow().library();
    }

    private void press(Button button) {
        button.notifyListeners(SWT.Selection, new Event());
        window.workFor(100);
    }

    private void press(String id) {
        press(window.find(id, Button.class));
    }

    private void tick(String id) {
        var button = window.find(id, Button.class);
        button.setSelection(!button.getSelection());
        press(button);
    }

    /** A button of the wizard, by the id that the platform gives it. */
    private Button wizardButton(int id) {
        return button(window.find("pack.rows", Table.class).getShell(), id);
    }

    private static Button button(Composite parent, int id) {
        for (var child : parent.getChildren()) {
            if (child instanceof Button button && Integer.valueOf(id).equals(child.getData())) {
                return button;
            }
            if (child instanceof Composite inner && button(inner, id) != null) {
                return button(inner, id);
            }
        }
        return null;
    }

    private Shell openWizard(String filter) {
        new PackAction(window.shell(), library()).run();
        window.find("pack.filter", Text.class).setText(filter);
        return window.find("pack.rows", Table.class).getShell();
    }

    private void tickFirstRow() {
        var table = window.find("pack.rows", Table.class);
        var event = new Event();
        event.item = table.getItem(0);
        ((TableItem) event.item).setChecked(true);
        table.notifyListeners(SWT.Selection, event);
    }

    /** Opens the second page with the lead story's procedure chosen; returns the wizard's shell. */
    private Shell choose() {
        var shell = openWizard(PROCEDURE);
        tickFirstRow();
        window.find("pack.drafts", Button.class).setSelection(true);
        press(wizardButton(IDialogConstants.NEXT_ID));
        window.waitUntil("the preview is there", () -> preview().contains("Not in the pack:"));
        return shell;
    }

    private String preview() {
        return window.find("pack.preview", Text.class).getText();
    }

    private void pictures(String name) {
        var appearance = PlatformUI.getWorkbench().getService(Appearance.class);
        window.screenshot(name + "-light");
        appearance.choose(Appearance.Mode.DARK);
        window.screenshot(name + "-dark");
        appearance.choose(Appearance.Mode.LIGHT);
    }

    private Path pack() throws Exception {
        var file = scratch.resolve("lead.zip");
        library().packing().make(new PackRequest("Lead story", List.of(PROCEDURE), List.of(), List.of(),
                Set.of(), true, false, Set.of()), EnumSet.of(Form.LIBRARY), false, file, new NullProgressMonitor());
        return file;
    }

    @Test
    void wizardSaysWhatGoesInAndWhatNotBeforeItWritesPages() throws Exception {
        openWizard(PROCEDURE);
        tickFirstRow();
        window.find("pack.drafts", Button.class).setSelection(true);
        pictures("pack-choice");
        var shell = window.find("pack.rows", Table.class).getShell();
        press(wizardButton(IDialogConstants.NEXT_ID));
        window.waitUntil("the preview is there", () -> preview().contains("Not in the pack:"));
        assertTrue(preview().contains("prices: stay out unless chosen"), preview());
        pictures("pack-place");
        window.find("pack.place", Text.class).setText(scratch.resolve("out").toString());
        press(button(shell, IDialogConstants.FINISH_ID));
        var result = window.find("pack.result", Text.class).getText();
        assertTrue(result.contains("index.html"), result);
        assertTrue(Files.exists(scratch.resolve("out/index.html")) && Files.exists(scratch.resolve("out/pages/" + PROCEDURE + ".html")));
    }

    @Test
    void proceduresOfOneNameAreToldApartByTheirMachines() {
        openWizard("valve clearance");
        var table = window.find("pack.rows", Table.class);
        var lines = Stream.of(table.getItems()).map(item -> item.getText(0) + " / " + item.getText(1)).toList();
        assertTrue(lines.size() > 1, lines.toString());
        assertEquals(lines.size(), Set.copyOf(lines).size(), lines.toString());
    }

    @Test
    void wizardWithoutAFormOrOverSomethingThereDoesNotFinish() throws Exception {
        var shell = choose();
        var finish = button(shell, IDialogConstants.FINISH_ID);
        assertTrue(finish.isEnabled());
        tick("pack.html");
        assertFalse(finish.isEnabled());
        tick("pack.library");
        assertTrue(finish.isEnabled());
        assertTrue(window.find("pack.place", Text.class).getText().endsWith(".zip"));
        var there = Files.writeString(scratch.resolve("there.zip"), "mine");
        window.find("pack.place", Text.class).setText(there.toString());
        press(finish);
        assertFalse(shell.isDisposed());
        assertEquals("mine", Files.readString(there));
    }

    @Test
    void packOfTheSameLibraryHasNothingNew() throws Exception {
        var file = pack();
        new TakeAction(window.shell(), library()).take(file);
        var counts = window.find("take.counts", Label.class).getText();
        assertTrue(counts.startsWith("0 new"), counts);
        assertFalse(window.find("take.ok", Button.class).isEnabled());
    }

    @Test
    void whatIsMissingIsTakenAndTakenBack() throws Exception {
        var file = pack();
        var tool = firstTool();
        Files.delete(copy.file(tool));
        library().refresh(new NullProgressMonitor());
        new TakeAction(window.shell(), library()).take(file);
        assertTrue(window.find("take.counts", Label.class).getText().startsWith("1 new"));
        var detail = window.find("take.detail", Text.class).getText();
        assertTrue(detail.startsWith(tool), detail);
        pictures("pack-take");
        press("take.ok");
        window.find("pack.result", Text.class);
        assertTrue(Files.exists(copy.file(tool)));
        press("pack.result.ok");
        new TakeAction(window.shell(), library()).back();
        window.find("pack.result", Text.class);
        assertFalse(Files.exists(copy.file(tool)));
    }

    private String firstTool() throws IOException {
        try (var tools = Files.list(copy.file("tools"))) {
            return "tools/" + tools.map(file -> file.getFileName().toString()).filter(name -> inPack(name)).sorted().findFirst()
                    .orElseThrow();
        }
    }

    private boolean inPack(String name) {
        try (var zip = new ZipFile(scratch.resolve("lead.zip").toFile())) {
            return zip.stream().anyMatch(entry -> entry.getName().endsWith("tools/" + name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void conflictWantsAnAnswerFirst() throws Exception {
        var file = pack();
        var procedure = copy.file("procedures/" + PROCEDURE + ".xmi");
        Files.writeString(procedure, Files.readString(procedure).replaceFirst("title=\"[^\"]*\"", "title=\"Renew it otherwise\""));
        library().refresh(new NullProgressMonitor());
        new TakeAction(window.shell(), library()).take(file);
        var take = window.find("take.ok", Button.class);
        assertEquals("Conflict", window.find("take.items", Table.class).getItem(0).getText(0));
        assertFalse(take.isEnabled());
        tick("take.theirs");
        assertTrue(take.isEnabled());
        pictures("pack-conflict");
        press(take);
        window.find("pack.result", Text.class);
        assertFalse(Files.readString(procedure).contains("Renew it otherwise"));
    }

    @Test
    void progressOfALearnerIsWrittenIntoTheShop() throws Exception {
        var people = library().trainings().people();
        var learner = people.get(0);
        var mentor = people.get(1);
        var file = Files.writeString(scratch.resolve("progress.txt"), "benchlore-progress\t1\npack\tLead story\nlearner\t" + learner.getTitle()
                + "\ntask\t" + PROCEDURE + "\tDONE_WITH\t2026-01-15\t" + mentor.getInitials() + "\ntask\tno-such\tWATCHED\t2026-01-15\t\n");
        new TakeAction(window.shell(), library()).take(file);
        var table = window.find("progress.lines", Table.class);
        assertEquals(learner.getTitle(), window.find("progress.person", Combo.class).getText());
        assertTrue(Arrays.stream(table.getItems()).anyMatch(item -> item.getText(4).contains("the library has no such procedure")));
        pictures("pack-progress");
        press("progress.ok");
        window.find("pack.result", Text.class);
        assertTrue(Files.readString(copy.file("shop.xmi")).contains("DONE_WITH"));
    }
}
