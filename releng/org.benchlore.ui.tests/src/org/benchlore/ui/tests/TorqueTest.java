// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.page.PageOpener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Torques are asked about by keys; what is wrong stands at its field, what is calculated carries its mark. */
class TorqueTest {

    private static final int JUDGE = 0;
    private static final int BOLT = 1;
    private static final int CONVERT = 2;
    private static final int WRENCH = 3;
    private static final int SEQUENCE = 4;

    private final WindowDriver window = new WindowDriver();
    private final IWorkbenchPage bench = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private LibraryCopy library;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        bench.showView(Ids.TORQUE_VIEW);
        window.find("torque.tabs", TabFolder.class);
    }

    @AfterEach
    void close() throws Exception {
        bench.hideView(bench.findView(Ids.TORQUE_VIEW));
        bench.closeAllEditors(false);
        library.close();
    }

    private void tab(int index) {
        window.find("torque.tabs", TabFolder.class).setSelection(index);
        window.workFor(100);
    }

    private void write(String id, String words) {
        window.find("torque." + id, Text.class).setText(words);
    }

    private void choose(String id, String words) {
        window.find("torque." + id, Combo.class).setText(words);
    }

    private String answer(String tab) {
        return window.find("torque." + tab + ".answer", StyledText.class).getText();
    }

    private void judge(String torque, String thread, String propertyClass) {
        tab(JUDGE);
        write("judge.torque", torque);
        write("judge.thread", thread);
        choose("judge.class", propertyClass);
    }

    @Test
    void theKeyOpensItWithTheCursorInTheFirstField() {
        bench.hideView(bench.findView(Ids.TORQUE_VIEW));
        window.activate();
        window.pressLetter('t', SWT.CTRL, SWT.SHIFT);
        var first = window.find("torque.judge.torque", Text.class);
        window.waitUntil("the cursor is in the torque", first::isFocusControl);
        window.press(SWT.TAB);
        window.waitUntil("the cursor is in the angles", window.find("torque.judge.angles", Text.class)::isFocusControl);
    }

    @Test
    void aTorqueIsJudgedAsItIsTyped() {
        judge("45 N·m", "M10", "8.8");
        assertTrue(answer("judge").contains("45 N·m: usual"), answer("judge"));
        assertTrue(answer("judge").contains("calculated, not the maker's"));
        assertTrue(answer("judge").contains("aluminium"));
        assertTrue(answer("judge").contains("a licensed person decide"));
        judge("60 N·m", "M10", "8.8");
        assertTrue(answer("judge").contains("above proof"), answer("judge"));
        window.screenshot("torque-judge");
    }

    @Test
    void whatIsWrongStandsAtItsFieldAndNoOldAnswerStays() {
        assertRefused("45 Nx", "M10", "8.8", "torque");
        assertRefused("45 N·m", "M13", "8.8", "thread");
        assertRefused("45 N·m", "#10-24", "8.8", "thread");
        assertRefused("45 N·m", "M10", "88", "class");
        assertRefused("45 N·m", "M10", "", "class");
        assertRefused("45 N·m", "M10", "grade 8", "class");
    }

    private void assertRefused(String torque, String thread, String propertyClass, String field) {
        judge("45 N·m", "M10", "8.8");
        judge(torque, thread, propertyClass);
        var problem = window.find("torque.judge." + field + ".problem", Label.class);
        assertTrue(problem.getText().endsWith("."), problem.getText());
        assertFalse(answer("judge").contains("45 N·m: usual"), answer("judge"));
        assertTrue(answer("judge").startsWith(problem.getText()), answer("judge"));
        judge("45 N·m", "M10", "8.8");
        window.waitUntil("nothing is wrong any more", () -> !window.has("torque.judge." + field + ".problem"));
    }

    @Test
    void aBoltIsCalculatedAndEveryAnswerIsReadOnly() {
        tab(BOLT);
        write("bolt.thread", "M12");
        choose("bolt.class", "8.8");
        write("bolt.friction", "0.12");
        assertTrue(answer("bolt").contains("83.6 N·m"), answer("bolt"));
        assertFalse(window.find("torque.bolt.answer", StyledText.class).getEditable());
        window.screenshot("torque-bolt");
    }

    @Test
    void aTorqueIsShownInEveryUnit() {
        tab(CONVERT);
        write("convert.torque", "80 ft-lb");
        assertTrue(answer("convert").contains("108.5 N·m") && answer("convert").contains("960 lbf·in"), answer("convert"));
    }

    @Test
    void theShopsWrenchesAreNamed() {
        tab(WRENCH);
        write("wrench.torque", "80 N·m");
        window.waitUntil("the wrenches are read", () -> answer("wrench").contains("W-2100-1"));
        write("wrench.length", "400");
        write("wrench.offset", "50");
        assertTrue(answer("wrench").contains("71.1 N·m"), answer("wrench"));
        window.screenshot("torque-wrench");
    }

    @Test
    void aSequenceIsDrawn() {
        tab(SEQUENCE);
        write("sequence.size", "8");
        assertTrue(answer("sequence").contains("1 5 3 7 2 6 4 8"), answer("sequence"));
        assertTrue(answer("sequence").contains("\uFFFC"), "there is a drawing");
        choose("sequence.layout", "rectangle or row");
        assertTrue(window.find("torque.sequence.size.problem", Label.class).getText().contains("'8' is no rectangle"));
        write("sequence.size", "2x5");
        window.screenshot("torque-sequence");
    }

    @Test
    void aFasteningOfThePageIsTakenIn() {
        var address = address("renew-pto-actuator");
        new PageOpener(bench, LibraryCopy.session()).open(address);
        var choice = window.find("torque.fastening", Combo.class);
        window.waitUntil("the actuator's bolts are offered", () -> choice.getText().contains("M8"));
        window.find("torque.take", Button.class).notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
        assertEquals("M8", window.find("torque.judge.thread", Text.class).getText());
        assertFalse(window.find("torque.judge.torque", Text.class).getText().isBlank());
        window.screenshot("torque-taken");
    }

    private static Address address(String id) {
        return LibraryCopy.session().current().orElseThrow().library().library().catalogue().byId(id).orElseThrow()
                .address();
    }
}
