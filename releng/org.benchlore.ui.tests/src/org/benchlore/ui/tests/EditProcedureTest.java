// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class EditProcedureTest extends EditorTest {

    private static final String FILE = "procedures/renew-pto-actuator.xmi";

    @BeforeEach
    void open() throws Exception {
        edit.open(FILE, "renew-pto-actuator");
    }

    private String saved() throws Exception {
        edit.save();
        return read(FILE);
    }

    @Test
    void stepIsMovedDownByKeyAndStaysSelected() throws Exception {
        edit.outline("1. Mark the lie");
        var tree = window.find("form.outline", Tree.class);
        edit.focus(tree);
        window.press(SWT.ARROW_DOWN, SWT.ALT);
        window.waitUntil("it is second", () -> tree.getSelection()[0].getText().startsWith("2. Mark the lie"));
        var text = saved();
        assertTrue(text.indexOf("step-uder") < text.indexOf("step-m3tb"));
    }

    private static Stream<TreeItem> all(TreeItem item) {
        return Stream.concat(Stream.of(item), Arrays.stream(item.getItems()).flatMap(EditProcedureTest::all));
    }

    @Test
    void theOutlineSaysTitlesWhereTheTextRefersToElements() {
        var tree = window.find("form.outline", Tree.class);
        var steps = Arrays.stream(tree.getItems()).flatMap(EditProcedureTest::all).map(TreeItem::getText).toList();
        assertTrue(steps.stream().anyMatch(step -> step.contains("New Seal ring between actuator and take-off, a film of")),
                steps.toString());
    }

    @Test
    void controlAndEnterBeginsTheNextStep() throws Exception {
        edit.outline("1. Mark the lie");
        edit.focus(edit.text("Step.text"));
        window.press(SWT.CR, SWT.CTRL);
        window.waitUntil("the new step has the cursor", () -> edit.text("Step.text").isFocusControl()
                && edit.text("Step.text").getText().isEmpty());
        window.type("zz look again");
        window.waitUntil("the outline shows it", () -> window.find("form.outline", Tree.class).getSelection()[0].getText()
                .equals("2. zz look again"));
        var text = saved();
        assertTrue(text.indexOf("step-m3tb") < text.indexOf("zz look again")
                && text.indexOf("zz look again") < text.indexOf("step-uder"));
    }

    @Test
    void torqueIsRefusedWhenNonsenseAndSavedAsEntered() throws Exception {
        edit.outline("1. Mark the lie");
        edit.click("Step.fastenings.add");
        edit.write("Fastening.place", "cover bolts");
        edit.click("Fastening.stages.add");
        edit.write("Stage.torque", "tight");
        var problem = window.find("problem.Stage.torque", Label.class);
        assertTrue(problem.getText().contains("'tight'"), problem.getText());
        window.waitUntil("it is counted", () -> edit.head().startsWith("1 field is to be mended"));
        window.pressLetter('s', SWT.CTRL);
        assertTrue(edit.editor().isDirty());
        window.screenshot("edit-torque-refused");
        edit.write("Stage.torque", "22.0 N·m");
        window.waitUntil("nothing is to be mended", () -> edit.head().equals(FILE));
        assertTrue(saved().contains("torque=\"22.0 N·m\""));
    }

    @Test
    void noneIsRefusedWhileSomethingStandsInTheList() throws Exception {
        edit.outline("Bolts within reach");
        var recorded = window.find("Work.hazards.recorded", Combo.class);
        assertEquals("complete as listed", recorded.getText());
        var tools = window.find("Work.tools.recorded", Combo.class);
        tools.select(1);
        tools.notifyListeners(SWT.Selection, null);
        window.waitUntil("it says why not", () -> window.has("problem.Work.tools")
                && window.find("problem.Work.tools", Label.class).getText().contains("remove them"));
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("undo takes it back", () -> tools.getText().equals("complete as listed"));
    }

    @Test
    void stepsOfAnotherProcedureAreInsertedAsOneEdit() throws Exception {
        edit.outline("1. Mark the lie");
        var tree = window.find("form.outline", Tree.class);
        int before = tree.getItem(0).getItem(0).getItemCount();
        var menu = tree.getMenu();
        menu.getItem(3).notifyListeners(SWT.Selection, null);
        window.find("insert.field", org.eclipse.swt.widgets.Text.class).setText("bleed");
        var steps = window.find("insert.steps", Table.class);
        steps.getItem(0).setChecked(true);
        steps.getItem(1).setChecked(true);
        steps.notifyListeners(SWT.Selection, null);
        window.screenshot("edit-insert");
        edit.click("insert.ok");
        window.waitUntil("both are there", () -> tree.getItem(0).getItem(0).getItemCount() == before + 2);
        edit.focus(tree);
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("one undo removes both", () -> tree.getItem(0).getItem(0).getItemCount() == before);
    }
}
