// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.page.ElementInput;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.plan.PlanView;
import org.benchlore.ui.status.LastChange;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A plan is picked by keys, planned again at every change, printed, and started as a job that can be taken back. */
class PlanViewTest {

    private final WindowDriver window = new WindowDriver();
    private final IWorkbenchPage bench = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private LibraryCopy library;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        PlanView.show(bench);
        press("plan.startOver");
        window.waitUntil("the view says what to do", () -> page().contains("Pick the unit"));
    }

    @AfterEach
    void close() throws Exception {
        bench.hideView(bench.findView(Ids.PLAN_VIEW));
        bench.closeAllEditors(false);
        library.close();
    }

    private String page() {
        return window.has("plan.page") ? window.find("plan.page", StyledText.class).getText() : "";
    }

    /** Types into a field and takes the first that fits with Enter. */
    private void pick(String field, String letters) {
        var text = window.find(field, Text.class);
        window.focus(text);
        text.selectAll();
        window.type(letters);
        var choices = window.find(field + ".choices", Table.class);
        window.workFor(200);
        assertTrue(choices.getItemCount() > 0);
        window.press(SWT.CR);
    }

    private void pickBoth() {
        pick("plan.subject", "lorry 17");
        pick("plan.work", "clutch pack");
        pick("plan.work", "actuator");
        window.waitUntil("both are planned together", () -> page().contains("Against separate visits"));
    }

    private void tick(String table, String title) {
        var control = window.find(table, Table.class);
        var item = Arrays.stream(control.getItems()).filter(one -> one.getText().contains(title)).findFirst()
                .orElseThrow(() -> new AssertionError(title + " in " + Arrays.toString(control.getItems())));
        window.focus(control);
        control.setSelection(item);
        item.setChecked(true);
        var event = new Event();
        event.detail = SWT.CHECK;
        event.item = item;
        control.notifyListeners(SWT.Selection, event);
    }

    private void press(String button) {
        window.find(button, Button.class).notifyListeners(SWT.Selection, new Event());
    }

    private String said() {
        return window.find("plan.said", Label.class).getText();
    }

    @Test
    void theKeyShowsItWithTheCursorInTheFirstField() {
        bench.hideView(bench.findView(Ids.PLAN_VIEW));
        window.workFor(300);
        window.activate();
        window.pressLetter('p', SWT.CTRL, SWT.SHIFT);
        var first = window.find("plan.subject", Text.class);
        window.waitUntil("the cursor is in the unit", first::isFocusControl);
        assertFalse(window.find("plan.printCard", Button.class).isEnabled());
        window.waitUntil("it says what to do", () -> page().contains("Pick the unit"));
        assertTrue(page().contains("Invented"), page());
        window.screenshot("plan-empty");
    }

    @Test
    void unitAndWorkArePickedByKeysAndPlannedTogether() {
        pickBoth();
        assertTrue(page().contains("One visit saves"), page());
        assertTrue(page().contains("0 on the shelf, comes in 2 days"), page());
        assertTrue(page().contains("a senior signs it before work begins"), page());
        assertTrue(page().contains("a licensed person decide"), page());
        assertTrue(page().indexOf("a licensed person decide") < page().indexOf("Earliest hand-back"), "in sight at once");
        window.screenshot("plan-picked");
    }

    @Test
    void theCursorGoesToTheWorkOnceTheUnitIsPicked() {
        pick("plan.subject", "lorry 17");
        window.waitUntil("the cursor is in the work", window.find("plan.work", Text.class)::isFocusControl);
        assertTrue(window.find("plan.subject", Text.class).getText().startsWith("Lorry 17"));
    }

    @Test
    void whatCanBeDoneIsInSightInASmallDarkWindow() {
        var appearance = PlatformUI.getWorkbench().getService(Appearance.class);
        var usual = window.shell().getSize();
        pickBoth();
        try {
            appearance.choose(Appearance.Mode.DARK);
            window.workFor(1500);
            window.screenshot("plan-dark");
            window.shell().setSize(800, 600);
            window.screenshot("plan-small");
            for (var id : List.of("plan.printCard", "plan.startJob", "plan.startOver")) {
                var button = window.find(id, Button.class);
                assertTrue(button.getBounds().x + button.getSize().x <= button.getParent().getSize().x, id);
                assertTrue(button.getSize().x >= button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x, id);
            }
        } finally {
            window.shell().setSize(usual);
            appearance.choose(Appearance.Mode.LIGHT);
        }
    }

    @Test
    void workIsTakenOutWithDelete() {
        pickBoth();
        var picked = window.find("plan.picked", Table.class);
        assertEquals(2, picked.getItemCount());
        window.focus(picked);
        picked.setSelection(1);
        window.press(SWT.DEL);
        window.waitUntil("one is left", () -> picked.getItemCount() == 1 && !page().contains("Against separate visits"));
    }

    @Test
    void ticksPlanFromWhereItStandsAndSayWhatChanged() {
        pickBoth();
        tick("plan.open", "Take-off unit opened");
        tick("plan.done", "clutch pack");
        window.waitUntil("it is compared", () -> page().contains("What changed against the first plan"));
        assertTrue(page().contains("No longer to do"), page());
        window.screenshot("plan-standing");
    }

    @Test
    void theAccessesAreDrawnAndTheCardHasHazardsAndBoxes() {
        pickBoth();
        var tabs = window.find("plan.tabs", TabFolder.class);
        show(tabs, 1);
        assertTrue(window.find("plan.picture", StyledText.class).getText().contains("\uFFFC"), "there is a drawing");
        window.screenshot("plan-accesses");
        show(tabs, 2);
        var card = window.find("plan.card", StyledText.class).getText();
        assertTrue(card.contains("Wrench: ____") && card.contains("WARNING"), card);
        window.screenshot("plan-card");
    }

    private void show(TabFolder tabs, int index) {
        tabs.setSelection(index);
        tabs.notifyListeners(SWT.Selection, new Event());
        window.workFor(200);
    }

    @Test
    void whatCannotBePlannedIsSaidInOneSentenceWithLinks() {
        pick("plan.subject", "lorry 17");
        pick("plan.work", "fan bearings");
        window.waitUntil("it is refused", () -> page().contains("There is no plan"));
        assertTrue(page().contains("is not for"), page());
        assertTrue(page().lines().anyMatch(line -> line.strip().endsWith("Renew the bearings of the suction fan")), page());
        assertFalse(window.find("plan.startJob", Button.class).isEnabled());
        window.screenshot("plan-refused");
    }

    @Test
    void aMachineWithoutAccessesIsPlannedFromWholeJobsAndSaysSo() {
        pick("plan.subject", "van 4");
        window.waitUntil("it is said before", () -> page().contains("No accesses are written down"));
        pick("plan.work", "sliding door");
        window.waitUntil("it is planned", () -> page().contains("Earliest hand-back"));
        assertTrue(page().contains("planned from the hours of the whole job"), page());
        show(window.find("plan.tabs", TabFolder.class), 1);
        assertTrue(window.find("plan.picture", StyledText.class).getText().contains("nothing to draw"));
    }

    @Test
    void aKeyOnAPageAddsItToThePlan() {
        new PageOpener(bench, LibraryCopy.session()).open(address("renew-pto-actuator"));
        window.workFor(300);
        window.press(SWT.F7);
        window.waitUntil("it is picked", () -> window.has("plan.picked"));
        new PageOpener(bench, LibraryCopy.session()).open(address("lorry-17"));
        window.workFor(300);
        window.press(SWT.F7);
        window.waitUntil("it is planned", () -> page().contains("Earliest hand-back"));
    }

    @Test
    void theCardIsWrittenWhereTheViewSays() throws Exception {
        pickBoth();
        press("plan.printCard");
        window.waitUntil("it is said where the card lies", () -> said().contains(".html"));
        var words = said().substring(said().indexOf("lies at ") + "lies at ".length());
        var file = Path.of(words.substring(0, words.indexOf(".html") + ".html".length()));
        assertTrue(Files.readString(file).contains("Job card: "));
        Files.delete(file);
        Files.delete(file.getParent());
    }

    @Test
    void aJobIsStartedWithTheSeniorsNameAndTakenBack() {
        pickBoth();
        press("plan.startJob");
        var senior = window.find("plan.senior.1", Button.class);
        window.find("plan.senior.0", Button.class).setSelection(false);
        senior.setSelection(true);
        senior.notifyListeners(SWT.Selection, new Event());
        window.screenshot("plan-senior");
        press("plan.senior.start");
        var text = window.find("page.text", StyledText.class);
        window.waitUntil("the job's page is open", () -> text.getText().contains("Looked through before work by Oda Brekkan"));
        window.screenshot("plan-started");
        var job = ((ElementInput) bench.getActiveEditor().getEditorInput()).address();
        assertTrue(Files.exists(library.file(job.path())));
        bench.getWorkbenchWindow().getService(LastChange.class).takeBack(bench.getWorkbenchWindow());
        window.waitUntil("it is gone", () -> !Files.exists(library.file(job.path())));
        assertTrue(said().startsWith("Not started after all"), said());
    }

    @Test
    void theWindowIsGivenBackWhenSomebodyGoesElsewhereOrClosesIt() throws Exception {
        assertFalse(isTreeInSight());
        bench.activate(bench.findView(Ids.SEARCH_VIEW));
        window.waitUntil("the tree is back", this::isTreeInSight);
        PlanView.show(bench);
        window.waitUntil("the plan has the window", () -> !isTreeInSight());
        bench.hideView(bench.findView(Ids.PLAN_VIEW));
        window.waitUntil("the tree is back", this::isTreeInSight);
        PlanView.show(bench);
    }

    private boolean isTreeInSight() {
        return window.has("tree.filter");
    }

    private static Address address(String id) {
        return LibraryCopy.session().current().orElseThrow().library().library().catalogue().byId(id).orElseThrow()
                .address();
    }
}
