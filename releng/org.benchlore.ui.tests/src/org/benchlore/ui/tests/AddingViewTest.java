// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.plan.PlanRequest;
import org.benchlore.ui.Ids;
import org.benchlore.ui.adding.AddingView;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.plan.PlanView;
import org.benchlore.ui.status.LastChange;
import org.benchlore.workshop.PlannedJob;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is worth adding is weighed, figures are changed on the spot, and the customer's sheet is made from it. */
class AddingViewTest {

    private static final String PACK = "renew-pto-clutch-pack";
    private static final String ACTUATOR = "renew-pto-actuator";

    private final WindowDriver window = new WindowDriver();
    private final IWorkbenchPage bench = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private LibraryCopy library;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
    }

    @AfterEach
    void close() throws Exception {
        if (window.has("sheet.close")) {
            press("sheet.close");
        }
        for (var id : List.of(Ids.ADDING_VIEW, Ids.PLAN_VIEW)) {
            if (bench.findView(id) != null) {
                bench.hideView(bench.findView(id));
            }
        }
        bench.closeAllEditors(false);
        library.close();
    }

    private void press(String button) {
        window.find(button, Button.class).notifyListeners(SWT.Selection, new Event());
    }

    private String text(String id) {
        return window.has(id) ? window.find(id, StyledText.class).getText() : "";
    }

    private String said(String id) {
        return window.find(id, Label.class).getText();
    }

    private Table proposals() {
        return window.find("adding.proposals", Table.class);
    }

    private Table figures() {
        return window.find("adding.figures", Table.class);
    }

    /** As the job's editor and other views call it. */
    private void weigh(Map<String, String> parameters) throws Exception {
        var command = bench.getWorkbenchWindow().getService(ICommandService.class).getCommand("org.benchlore.ui.adding.this");
        bench.getWorkbenchWindow().getService(IHandlerService.class)
                .executeCommand(ParameterizedCommand.generateCommand(command, parameters), null);
    }

    private void weighPack() throws Exception {
        weigh(Map.of("unit", "lorry-17", "procedures", PACK));
        window.waitUntil("something can be added", () -> window.has("adding.proposals") && proposals().getItemCount() > 0
                && row("actuator") >= 0);
        select(row("actuator"));
    }

    private int row(String title) {
        var items = proposals().getItems();
        for (int i = 0; i < items.length; i++) {
            if (items[i].getText().contains(title)) {
                return i;
            }
        }
        return -1;
    }

    private void select(int row) {
        window.focus(proposals());
        proposals().setSelection(row);
        proposals().notifyListeners(SWT.Selection, new Event());
        window.workFor(100);
    }

    private void tick(Table table, int row) {
        table.getItem(row).setChecked(true);
        var event = new Event();
        event.detail = SWT.CHECK;
        event.item = table.getItem(row);
        table.notifyListeners(SWT.Selection, event);
    }

    private void figure(String words, String typed) {
        var items = figures().getItems();
        int at = Arrays.asList(items).indexOf(Arrays.stream(items).filter(it -> it.getText().contains(words)).findFirst()
                .orElseThrow());
        window.focus(figures());
        figures().setSelection(at);
        window.press(SWT.CR);
        var field = window.find("adding.figureField", Text.class);
        field.setText(typed);
        window.press(SWT.CR);
    }

    @Test
    void theKeyShowsItWithTheCursorInTheFirstField() throws Exception {
        AddingView.show(bench);
        press("adding.startOver");
        bench.hideView(bench.findView(Ids.ADDING_VIEW));
        window.workFor(300);
        window.activate();
        window.pressLetter('a', SWT.CTRL, SWT.SHIFT);
        window.waitUntil("it says what to do", () -> text("adding.page").contains("Pick the unit"));
        var first = window.find("adding.subject", Text.class);
        window.waitUntil("the cursor is in the unit", first::isFocusControl);
        assertFalse(window.find("adding.sheet", Button.class).isEnabled());
        assertTrue(text("adding.page").contains("Invented"), text("adding.page"));
        window.screenshot("adding-empty");
    }

    @Test
    void whatACommandNamesIsWeighedWithItsChartAndItsCounts() throws Exception {
        weighPack();
        assertTrue(text("adding.page").contains("\uFFFC"), "there is a chart");
        assertTrue(text("adding.page").contains("Invented"), text("adding.page"));
        assertTrue(proposals().getItem(row("actuator")).getText(3).matches(".*\\d.*"), "how often it was seen");
        assertTrue(said("adding.said").startsWith("Tick what"), said("adding.said"));
        window.screenshot("adding-weighed");
    }

    @Test
    void aFigureIsChangedByKeysMarkedAndPutBack() throws Exception {
        weighPack();
        var before = proposals().getItem(row("actuator")).getText(1);
        figure("Extra if done now, with tax", "1234,50");
        window.waitUntil("the sum follows", () -> proposals().getItem(row("actuator")).getText(1).equals("1234.50"));
        assertTrue(figures().getItem(0).getText().startsWith("* "), figures().getItem(0).getText());
        assertTrue(text("adding.page").contains("1234.50"), "the page follows");
        window.screenshot("adding-changed");
        window.focus(figures());
        window.press(SWT.DEL);
        window.waitUntil("the shop's own is back", () -> proposals().getItem(row("actuator")).getText(1).equals(before));
        assertFalse(figures().getItem(0).getText().startsWith("* "));
    }

    @Test
    void aFigureThatMakesNoSenseIsRefusedInASentence() throws Exception {
        weighPack();
        figure("Extra if done now, with tax", "much");
        assertTrue(said("adding.figureSaid").contains("is no number"), said("adding.figureSaid"));
        figure("how often it brings the unit back", "140");
        assertTrue(said("adding.figureSaid").contains("from 0 to 100"), said("adding.figureSaid"));
    }

    @Test
    void whatIsTickedIsTakenIntoThePlan() throws Exception {
        weighPack();
        assertFalse(window.find("adding.intoPlan", Button.class).isEnabled());
        tick(proposals(), row("actuator"));
        assertTrue(said("adding.said").startsWith("1 ticked"), said("adding.said"));
        press("adding.intoPlan");
        window.waitUntil("both are planned", () -> text("plan.page").contains("Against separate visits"));
        assertEquals(2, window.find("plan.picked", Table.class).getItemCount());
    }

    @Test
    void thePlanLeadsToItAndTheWindowIsGivenBackAfterwards() throws Exception {
        PlanView.show(bench).take("lorry-17", List.of(PACK), List.of(), List.of());
        window.waitUntil("it is planned", () -> text("plan.page").contains("Earliest hand-back"));
        press("plan.worthAdding");
        window.waitUntil("it is weighed", () -> window.has("adding.proposals") && proposals().getItemCount() > 0);
        window.workFor(300);
        assertFalse(window.has("tree.filter"), "it has the window");
        assertFalse(window.has("search.field"), "the search stands aside");
        bench.activate(bench.findView(Ids.SEARCH_VIEW));
        window.waitUntil("the tree is back", () -> window.has("tree.filter"));
    }

    @Test
    void theProcedureInFrontIsWeighed() throws Exception {
        AddingView.show(bench);
        press("adding.startOver");
        new PageOpener(bench, LibraryCopy.session()).open(address(PACK));
        window.workFor(300);
        window.press(SWT.F7, SWT.SHIFT);
        window.waitUntil("it is picked", () -> window.has("adding.picked")
                && window.find("adding.picked", Table.class).getItemCount() == 1);
    }

    @Test
    void theNoteInFrontIsWeighedWithWhatItIsAddedTo() throws Exception {
        AddingView.show(bench);
        press("adding.startOver");
        new PageOpener(bench, LibraryCopy.session()).open(address("note-2026-filter-black-after-burnt-pack-g8mq"));
        window.workFor(300);
        window.press(SWT.F7, SWT.SHIFT);
        window.waitUntil("its addition is weighed", () -> window.has("adding.proposals") && row("filter") >= 0);
        assertTrue(window.find("adding.picked", Table.class).getItem(0).getText().contains("clutch pack"));
    }

    @Test
    void whatIsInSightInASmallDarkWindowIsEnough() throws Exception {
        var appearance = PlatformUI.getWorkbench().getService(Appearance.class);
        var usual = window.shell().getSize();
        weighPack();
        try {
            appearance.choose(Appearance.Mode.DARK);
            window.workFor(1500);
            window.screenshot("adding-dark");
            window.shell().setSize(800, 600);
            window.workFor(300);
            window.screenshot("adding-small");
            for (var id : List.of("adding.sheet", "adding.intoPlan", "adding.startOver", "adding.stop")) {
                var button = window.find(id, Button.class);
                assertTrue(button.getBounds().x + button.getSize().x <= button.getParent().getSize().x, id);
                assertTrue(button.getBounds().y + button.getSize().y <= button.getParent().getSize().y, id);
            }
            assertTrue(proposals().getClientArea().height >= 2 * proposals().getItemHeight(), "two rows are in sight");
            assertTrue(figures().getClientArea().height >= 2 * figures().getItemHeight(), "two figures are in sight");
            press("adding.sheet");
            window.waitUntil("the sheet is made", () -> text("sheet.preview").contains("Valid until"));
            window.screenshot("sheet-small-dark");
        } finally {
            window.shell().setSize(usual);
            appearance.choose(Appearance.Mode.LIGHT);
        }
    }

    private void advise() {
        var way = window.find("adding.advice", Combo.class);
        way.select(2);
        way.notifyListeners(SWT.Selection, new Event());
        window.find("adding.because", Text.class).setText("the strip is the dear part");
    }

    private void sheet(String job) throws Exception {
        weigh(job.isEmpty() ? Map.of("unit", "lorry-17", "procedures", PACK)
                : Map.of("unit", "lorry-17", "procedures", PACK, "job", job));
        window.waitUntil("something can be added", () -> window.has("adding.proposals") && row("actuator") >= 0);
        select(row("actuator"));
        advise();
        press("adding.sheet");
        window.waitUntil("the sheet is made", () -> text("sheet.preview").contains("Valid until"));
    }

    @Test
    void theSheetHasWhatAPersonAdvisesAndWhatWasDeclined() throws Exception {
        sheet("");
        assertTrue(text("sheet.preview").contains("renew it now, because the strip is the dear part"), text("sheet.preview"));
        assertFalse(text("sheet.preview").contains("Declined by you"), text("sheet.preview"));
        tick(window.find("sheet.declined", Table.class), row("actuator"));
        window.waitUntil("it is declined", () -> text("sheet.preview").contains("Declined by you"));
        window.screenshot("sheet");
    }

    @Test
    void aDayThatIsNoneIsSaidAndNotSaved() throws Exception {
        sheet("");
        window.find("sheet.validUntil", Text.class).setText("soon");
        window.waitUntil("it is said", () -> said("sheet.said").contains("'soon' is no day"));
        var file = Files.createTempDirectory("sheet").resolve("sheet.html");
        window.find("sheet.file", Text.class).setText(file.toString());
        press("sheet.save");
        window.workFor(300);
        assertFalse(Files.exists(file));
    }

    @Test
    void theSheetIsSavedOnceAndASecondOneSaysWhatChanged() throws Exception {
        sheet("");
        var file = Files.createTempDirectory("sheet").resolve("sheet.html");
        window.find("sheet.file", Text.class).setText(file.toString());
        press("sheet.save");
        window.waitUntil("it is saved", () -> said("sheet.said").startsWith("Saved"));
        assertTrue(Files.readString(file).contains("Your choice"));
        press("sheet.save");
        window.waitUntil("it is not written over", () -> said("sheet.said").contains("is there already"));
        window.find("sheet.first", Text.class).setText(file.toString());
        window.waitUntil("it says what changed", () -> text("sheet.preview").contains("What changed against the sheet"));
        window.find("sheet.file", Text.class).setText("sheet.pdf");
        press("sheet.save");
        assertTrue(said("sheet.said").contains("neither text nor HTML"), said("sheet.said"));
    }

    @Test
    void theOffersAreWrittenIntoTheJobAndTakenBack() throws Exception {
        var job = startJob();
        var before = Files.readString(library.file(job.path()));
        sheet(job.id());
        var file = Files.createTempDirectory("sheet").resolve("sheet.txt");
        window.find("sheet.file", Text.class).setText(file.toString());
        assertTrue(window.find("sheet.offers", Button.class).getSelection());
        press("sheet.save");
        window.waitUntil("they are written", () -> said("sheet.said").contains("The offers are written"));
        assertNotEquals(before, Files.readString(library.file(job.path())));
        assertTrue(Files.readString(library.file(job.path())).contains(ACTUATOR));
        press("sheet.close");
        bench.getWorkbenchWindow().getService(LastChange.class).takeBack(bench.getWorkbenchWindow());
        window.waitUntil("they are gone", () -> read(library.file(job.path())).equals(before));
    }

    private Address startJob() throws Exception {
        var opened = LibraryCopy.session().current().orElseThrow().library();
        var plan = opened.planner().plan(new PlanRequest("lorry-17", List.of(PACK), List.of(), List.of(), LocalDate.now(),
                Optional.empty()));
        var file = new PlannedJob(opened).start(plan, Optional.empty());
        return new Address(file.path(), file.root().orElseThrow().getId());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Address address(String id) {
        return LibraryCopy.session().current().orElseThrow().library().library().catalogue().byId(id).orElseThrow()
                .address();
    }
}
