// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.benchlore.ui.Ids;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.page.PageOpener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What may be wrong is asked by keys; answers to the checks change it at once and can be taken back. */
class DiagnoseTest {

    private final WindowDriver window = new WindowDriver();
    private final IWorkbenchPage bench = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private LibraryCopy library;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        bench.closeAllEditors(false);
        bench.activate(bench.findView(Ids.TREE_VIEW));
        window.activate();
        window.pressLetter('g', SWT.CTRL, SWT.SHIFT);
        window.find("diagnose.page", StyledText.class);
    }

    @AfterEach
    void close() throws Exception {
        bench.hideView(bench.findView(Ids.DIAGNOSE_VIEW));
        bench.closeAllEditors(false);
        library.close();
    }

    private Text field(String id) {
        return window.find("diagnose." + id, Text.class);
    }

    private String page() {
        return window.find("diagnose.page", StyledText.class).getText();
    }

    private void waitForPage(String words) {
        window.waitUntil("the page says '" + words + "'", () -> page().contains(words));
    }

    private void push(String id) {
        window.find(id, Button.class).notifyListeners(SWT.Selection, new Event());
    }

    private void askOfTheMachine() {
        field("about").setText("dravholm-hl26");
        field("symptoms").setText("teach-in stops");
        waitForPage("Causes, the likeliest first");
        window.waitUntil("a check can be answered", () -> window.has("diagnose.answer.1"));
    }

    @Test
    void aUnitIsFoundByLettersAndTheAnswerFollows() {
        assertTrue(page().contains("Choose a unit or a machine"), page());
        window.focus(field("about"));
        window.type("lorry 17");
        var choices = window.find("diagnose.about.choices", Table.class);
        assertTrue(choices.getItemCount() > 0);
        window.press(SWT.CR);
        field("codes").setText("4c17");
        field("after").setText("renew-pto-clutch-pack");
        waitForPage("Causes, the likeliest first");
        waitForPage("After");
        assertTrue(page().contains("Invented for demonstration"), page());
        assertTrue(page().contains("a licensed person decide"), page());
        assertFalse(page().contains("--answer"), page());
        assertTrue(page().contains("Repeat step 3."), page());
        var size = window.shell().getSize();
        window.shell().setSize(1440, 1000);
        window.screenshot("diagnose-light");
        window.shell().setSize(size);
    }

    @Test
    void tabTakesTheOnlyOneThatIsMeantAndGoesOn() {
        window.focus(field("about"));
        field("about").setText("van-02");
        window.waitUntil("choices are shown", () -> window.find("diagnose.about.choices", Table.class).isVisible());
        window.press(SWT.TAB);
        assertEquals("Van 2, harbour office", field("about").getText());
        assertTrue(field("symptoms").isFocusControl());
    }

    @Test
    void whereNothingIsKnownTheWordsOfTheBookAreOfferedByKeys() {
        field("about").setText("van-02");
        field("symptoms").setText("van shakes at traffic lights");
        waitForPage("Nothing is known here of");
        window.waitUntil("words are offered", () -> window.has("diagnose.answer.1"));
        int number = 1;
        while (!window.find("diagnose.answer." + number, Button.class).getText().endsWith("Shakes at idle")) {
            number++;
        }
        window.screenshot("diagnose-meant");
        window.focus(field("codes"));
        window.pressLetter((char) ('0' + number), SWT.ALT);
        waitForPage("Plate of the recirculation valve sticks");
        waitForPage("Causes, the likeliest first");
        assertEquals("Shakes at idle", field("symptoms").getText());
    }

    @Test
    void anAnswerByItsKeyChangesThePageAndIsTakenBack() {
        askOfTheMachine();
        var before = page();
        assertFalse(window.find("diagnose.takeBack", Button.class).getEnabled());
        window.focus(field("codes"));
        window.pressLetter('1', SWT.ALT);
        waitForPage("Answered");
        window.waitUntil("it can be taken back", () -> window.find("diagnose.takeBack", Button.class).getEnabled());
        window.screenshot("diagnose-answered");
        push("diagnose.takeBack");
        window.waitUntil("it is as before", () -> page().equals(before));
    }

    @Test
    void theWayIsWrittenDownAsANoteAboutTheMachine() {
        askOfTheMachine();
        var answer = window.find("diagnose.answer.1", Button.class).getText().substring(2).strip();
        push("diagnose.answer.1");
        waitForPage("Answered");
        push("diagnose.writeDown");
        var note = window.find("note.text", Text.class);
        assertTrue(note.getText().contains(answer), note.getText());
        push("note.drop");
    }

    private void askOfTheUnitAndFindTheActuator() {
        field("about").setText("lorry-21");
        field("symptoms").setText("Teach-in stops half way");
        field("codes").setText("4C17, X9Z9");
        field("after").setText("renew-pto-clutch-pack");
        waitForPage("Causes, the likeliest first");
        window.waitUntil("the travel can be answered", () -> answer("Below 11.0 mm").isPresent());
        answer("Below 11.0 mm").orElseThrow().notifyListeners(SWT.Selection, new Event());
        waitForPage("Answered");
        window.waitUntil("it leads on", () -> window.find("diagnose.intoJob", Button.class).getEnabled());
    }

    private java.util.Optional<Button> answer(String words) {
        for (int i = 1; window.has("diagnose.answer." + i); i++) {
            var button = window.find("diagnose.answer." + i, Button.class);
            if (button.getText().endsWith(words)) {
                return java.util.Optional.of(button);
            }
        }
        return java.util.Optional.empty();
    }

    private void choose(String button, String words) {
        push(button);
        for (var item : window.find(button, Button.class).getMenu().getItems()) {
            if (item.getText().contains(words)) {
                window.find(button, Button.class).getMenu().setVisible(false);
                item.notifyListeners(SWT.Selection, new Event());
                return;
            }
        }
        throw new AssertionError("no '" + words + "' below " + button);
    }

    @Test
    void theViewHasTheWholeWindowAndGivesItBackForAPage() {
        assertEquals(IWorkbenchPage.STATE_MAXIMIZED, bench.getPartState(bench.findViewReference(Ids.DIAGNOSE_VIEW)));
        assertTrue(page().contains("Invented for demonstration"), "before anything is asked: " + page());
        var unit = LibraryCopy.session().current().orElseThrow().library().library().catalogue().byId("lorry-17").orElseThrow();
        new PageOpener(bench, LibraryCopy.session()).open(unit.address());
        window.waitUntil("the page is seen", () -> bench.getPartState(bench.findViewReference(Ids.DIAGNOSE_VIEW))
                != IWorkbenchPage.STATE_MAXIMIZED);
    }

    @Test
    void whatWasFoundFillsTheFieldsOfANote() {
        askOfTheUnitAndFindTheActuator();
        push("diagnose.writeDown");
        var note = window.find("note.text", Text.class);
        assertTrue(note.getText().contains("Points to: Actuator tilts and stops short"), note.getText());
        var size = window.shell().getSize();
        window.shell().setSize(1440, 1000);
        window.screenshot("diagnose-note");
        window.shell().setSize(size);
        push("note.drop");
    }

    @Test
    void theWayGoesIntoANewJobAndIsTakenBack() {
        askOfTheUnitAndFindTheActuator();
        var catalogue = LibraryCopy.session().current().orElseThrow().library().library().catalogue();
        long before = catalogue.rows(org.benchlore.model.Kind.JOB).count();
        choose("diagnose.intoJob", "A new job");
        window.waitUntil("there is one more job", () -> jobs() == before + 1);
        var last = PlatformUI.getWorkbench().getService(org.benchlore.ui.status.LastChange.class);
        window.waitUntil("it is taken back", () -> {
            last.takeBack(PlatformUI.getWorkbench().getActiveWorkbenchWindow());
            return jobs() == before;
        });
    }

    private static long jobs() {
        return LibraryCopy.session().current().orElseThrow().library().library().catalogue()
                .rows(org.benchlore.model.Kind.JOB).count();
    }

    @Test
    void thePlanIsMadeForTheUnitAndWhatCuresTheCause() {
        askOfTheUnitAndFindTheActuator();
        try {
            choose("diagnose.plan", "(for: Actuator tilts");
            window.waitUntil("the plan is in front", () -> bench.getActivePartReference().getId().equals(Ids.PLAN_VIEW));
            window.waitUntil("it has the whole window", () -> bench.getPartState(bench.findViewReference(Ids.PLAN_VIEW))
                    == IWorkbenchPage.STATE_MAXIMIZED);
            window.waitUntil("it is planned", () -> window.has("plan.page")
                    && window.find("plan.page", StyledText.class).getText().contains("Lorry 21"));
            window.screenshot("diagnose-plan");
        } finally {
            bench.hideView(bench.findView(Ids.PLAN_VIEW));
        }
    }

    @Test
    void whatIsInFrontIsTakenInAndNothingThatIsNotMeantIsAsked() {
        field("about").setText("zzz");
        waitForPage("'zzz' is not one element yet");
        assertFalse(window.has("diagnose.answer.1"));
        var unit = LibraryCopy.session().current().orElseThrow().library().library().catalogue().byId("lorry-17")
                .orElseThrow();
        new PageOpener(bench, LibraryCopy.session()).open(unit.address());
        push("diagnose.begin");
        assertEquals(unit.title(), field("about").getText());
        waitForPage("Write what was noticed");
    }

    @Test
    void itFitsASmallDarkWindow() {
        var appearance = PlatformUI.getWorkbench().getService(Appearance.class);
        var size = window.shell().getSize();
        var wasMaximized = window.shell().getMaximized();
        appearance.choose(Appearance.Mode.DARK);
        try {
            window.shell().setMaximized(false);
            window.shell().setSize(800, 600);
            askOfTheMachine();
            window.screenshot("diagnose-dark-small");
            window.shell().setSize(1440, 1000);
            window.screenshot("diagnose-dark");
            window.shell().setSize(800, 600);
            var text = window.find("diagnose.page", StyledText.class);
            assertTrue(text.getSize().x > 250 && text.getSize().y > 60, text.getSize().toString());
        } finally {
            appearance.choose(Appearance.Mode.LIGHT);
            window.shell().setSize(size);
            window.shell().setMaximized(wasMaximized);
        }
    }
}
