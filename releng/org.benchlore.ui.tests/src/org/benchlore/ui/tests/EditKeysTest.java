// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A procedure is written down from paper without the mouse. */
class EditKeysTest extends EditorTest {

    private static final String FILE = "procedures/renew-pto-actuator.xmi";

    private Tree tree;

    @BeforeEach
    void open() throws Exception {
        edit.open(FILE, "renew-pto-actuator");
        tree = window.find("form.outline", Tree.class);
    }

    private String saved() throws Exception {
        edit.save();
        return read(FILE);
    }

    private int steps() {
        return tree.getItem(0).getItem(0).getItemCount();
    }

    private static void copyText(String text) {
        var board = new Clipboard(Display.getCurrent());
        board.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        board.dispose();
    }

    @Test
    void altAndADigitAddsAFasteningAndAltAndEnterItsTorque() throws Exception {
        edit.outline("1. Mark the lie");
        edit.focus(edit.text("Step.text"));
        window.pressLetter('2', SWT.ALT);
        window.waitUntil("the place has the cursor", () -> window.has("Fastening.place")
                && edit.text("Fastening.place").isFocusControl());
        window.type("zz cover");
        window.press(SWT.CR, SWT.ALT);
        window.waitUntil("the torque has the cursor", () -> window.has("Stage.torque")
                && edit.text("Stage.torque").isFocusControl());
        window.type("22 nm");
        edit.write("Stage.torque", "22 N·m");
        var text = saved();
        assertTrue(text.contains("zz cover") && text.contains("torque=\"22 N·m\""), text);
    }

    @Test
    void aLetterChoosesAWordOfADropDown() {
        edit.outline("1. Mark the lie");
        edit.focus(edit.text("Step.text"));
        var kind = window.find("Step.kind", Combo.class);
        window.focus(kind);
        window.type("d");
        window.waitUntil("it is chosen", () -> kind.getText().startsWith("d"));
        window.type("c");
        window.waitUntil("the next is chosen", () -> kind.getText().startsWith("c"));
    }

    @Test
    void linesOfTextArePastedAsStepsInOneEdit() throws Exception {
        int before = steps();
        edit.outline("1. Mark the lie");
        copyText("1. zzone: slacken\n\n2) zztwo 3.5 mm\n- zzthree\n");
        edit.focus(tree);
        window.pressLetter('v', SWT.CTRL);
        window.waitUntil("they are there", () -> steps() == before + 3);
        assertEquals("4. zzthree", tree.getSelection()[0].getText());
        var text = saved();
        assertTrue(text.indexOf("zzone: slacken") < text.indexOf("zztwo 3.5 mm"), text);
        edit.focus(tree);
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("one undo takes all back", () -> steps() == before);
    }

    @Test
    void aCopiedStepIsPastedWithAnIdOfItsOwn() throws Exception {
        int before = steps();
        edit.outline("1. Mark the lie");
        edit.focus(tree);
        window.pressLetter('c', SWT.CTRL);
        window.pressLetter('v', SWT.CTRL);
        window.waitUntil("there are two", () -> steps() == before + 1);
        var text = saved();
        assertEquals(text.indexOf("id=\"step-m3tb\""), text.lastIndexOf("id=\"step-m3tb\""));
    }

    @Test
    void aStepThatWasCutIsPastedFurtherDown() throws Exception {
        int before = steps();
        var first = edit.outline("1. Mark the lie").getText().substring(3);
        edit.focus(tree);
        window.pressLetter('x', SWT.CTRL);
        window.waitUntil("it is gone", () -> steps() == before - 1);
        edit.outline("2. ");
        edit.focus(tree);
        window.pressLetter('v', SWT.CTRL);
        window.waitUntil("it is third", () -> tree.getItem(0).getItem(0).getItem(2).getText().equals("3. " + first));
    }

    @Test
    void aStepGoesOnIntoTheNextWay() throws Exception {
        int ways = tree.getItem(0).getItemCount();
        tree.getMenu().getItem(2).notifyListeners(SWT.Selection, null);
        window.waitUntil("there is a further way", () -> tree.getItem(0).getItemCount() == ways + 1);
        var last = tree.getItem(0).getItem(ways - 1);
        var step = last.getItem(last.getItemCount() - 1);
        var words = step.getText().substring(step.getText().indexOf(' '));
        tree.setSelection(step);
        tree.notifyListeners(SWT.Selection, null);
        edit.focus(tree);
        window.press(SWT.ARROW_DOWN, SWT.ALT);
        window.waitUntil("it stands there", () -> tree.getItem(0).getItem(ways).getItemCount() == 1
                && tree.getItem(0).getItem(ways).getItem(0).getText().equals("1." + words));
    }

    @Test
    void anOpenBraceNamesAnotherElementInTheText() throws Exception {
        edit.outline("1. Mark the lie");
        var text = edit.text("Step.text");
        edit.focus(text);
        text.setSelection(text.getCharCount());
        text.insert(" See {");
        window.type("pto actuator");
        var choices = window.find("Step.text.choices", Table.class);
        window.screenshot("edit-text-link");
        window.waitUntil("something fits", () -> choices.getItemCount() > 0);
        window.press(SWT.CR);
        window.waitUntil("the name is whole", () -> text.getText().matches("(?s).* See \\{[a-z]+:[a-z0-9-]+\\}"));
    }

    @Test
    void aPartIsFoundByAPieceOfItsNumberWithoutSeparators() throws Exception {
        var number = Files.readString(library.file("parts/pto-actuator.xmi")).replaceAll("(?s).* number=\"([^\"]+)\".*", "$1");
        edit.outline("1. Mark the lie");
        edit.focus(edit.text("Step.text"));
        window.pressLetter('2', SWT.ALT);
        var field = window.find("Fastening.part", org.eclipse.swt.widgets.Text.class);
        edit.focus(field);
        window.type(number.toLowerCase().replaceAll("[^a-z0-9]", ""));
        window.waitUntil("it is found", () -> window.has("Fastening.part.choices")
                && window.find("Fastening.part.choices", Table.class).getItem(0).getText().contains(number));
    }

    @Test
    void aToolThatIsNotThereYetIsMadeFromTheField() throws Exception {
        edit.outline("Bolts within reach");
        edit.focus(edit.text("Titled.title"));
        window.find("Work.tools.add", org.eclipse.swt.widgets.Button.class);
        edit.click("Work.tools.add");
        var field = window.find("ToolUse.tool", org.eclipse.swt.widgets.Text.class);
        edit.focus(field);
        window.type("zzspanner long");
        window.waitUntil("it is offered", () -> window.has("ToolUse.tool.choices")
                && window.find("ToolUse.tool.choices", Table.class).getItem(0).getText().startsWith("New tool"));
        window.press(SWT.CR);
        window.waitUntil("it is chosen", () -> field.getText().equals("zzspanner long"));
        assertTrue(Files.exists(library.file("tools/zzspanner-long.xmi")));
    }

    @Test
    void theEditorHasTheRoomOfTheSearchViewUntilThatIsUsed() {
        window.waitUntil("the search view is a bar", () -> height("search.field") < 140);
        assertEquals("Invented for demonstration: not for use on a real machine.",
                window.find("form.invented", Label.class).getText());
        window.pressLetter('f', SWT.CTRL, SWT.SHIFT);
        window.waitUntil("it has its room again", () -> height("search.field") > 200);
    }

    private int height(String id) {
        Composite view = window.find(id, org.eclipse.swt.widgets.Control.class).getParent().getParent();
        return view.getSize().y;
    }
}
