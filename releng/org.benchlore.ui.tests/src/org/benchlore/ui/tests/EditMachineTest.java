// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.benchlore.model.Kind;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.look.Appearance;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

/** Machines and units are edited; the hours of a whole job become an access. */
class EditMachineTest extends EditorTest {

    private static final String LORRY = "machines/dravholm-hl26.xmi";
    private static final String SWEEPER = "machines/quillfen-s6.xmi";
    private static final String BEARINGS = "procedures/renew-sweeper-fan-bearings.xmi";
    private static final String UNIT = "units/lorry-14.xmi";

    private Tree tree() {
        return window.find("form.outline", Tree.class);
    }

    private String selected() {
        return tree().getSelection()[0].getText();
    }

    private void choose(Menu menu, String words) {
        menu.notifyListeners(SWT.Show, new org.eclipse.swt.widgets.Event());
        for (var item : menu.getItems()) {
            if (item.getText().replace("&", "").startsWith(words)) {
                assertTrue(item.isEnabled(), words);
                item.notifyListeners(SWT.Selection, null);
                window.workFor(100);
                return;
            }
        }
        throw new AssertionError("There is no menu item " + words);
    }

    private String saved(String path) throws Exception {
        edit.save();
        return read(path);
    }

    private void lorry() {
        edit.open(LORRY, "dravholm-hl26");
    }

    private void splitFan() {
        edit.open(BEARINGS, "renew-sweeper-fan-bearings");
        choose(tree().getMenu(), "Split the Hours");
        window.find("split.name", Text.class).setText("Suction fan out");
        window.find("split.strip.usual", Text.class).setText("1.5 h");
        window.find("split.refit.usual", Text.class).setText("1.5 h");
    }

    @Test
    void theOutlineHasComponentsWithCausesAccessesWithWorksAndChains() {
        lorry();
        edit.outline("Friction plates worn");
        window.find("Cause.frequency", org.eclipse.swt.widgets.Combo.class);
        window.screenshot("machine-cause");
        edit.outline("Lorry on column lifts");
        assertEquals("25 min", edit.text("Work.minutesUsual").getText());
        window.screenshot("machine-access");
        edit.outline("Strip, 25 min");
        window.find("Work.hazards.rows", Table.class);
        assertTrue(tree().getSelection()[0].getItemCount() > 0);
        edit.outline("The lorry drives");
        assertTrue(edit.text("Function.text").getText().isEmpty());
        assertFalse(edit.editor().isDirty());
    }

    @Test
    void aComponentIsAddedWithinAnotherAndMovedOut() throws Exception {
        lorry();
        edit.outline("Output shaft");
        choose(tree().getMenu(), "Component Within It");
        window.waitUntil("its name has the cursor", () -> edit.text("Titled.title").isFocusControl());
        window.waitUntil("a name is asked for", () -> edit.head().startsWith("1 field is to be mended"));
        window.type("spline sleeve");
        window.waitUntil("the outline shows it", () -> selected().equals("spline sleeve"));
        assertEquals("Output shaft", tree().getSelection()[0].getParentItem().getText());
        edit.focus(tree());
        window.press(SWT.ARROW_LEFT, SWT.CTRL, SWT.SHIFT);
        window.waitUntil("it stands beside it", () -> tree().getSelection()[0].getParentItem().getText()
                .equals("Take-off unit"));
        assertTrue(saved(LORRY).contains("title=\"spline sleeve\""));
    }

    @Test
    void oneMoreCauseIsBegunByKey() throws Exception {
        lorry();
        edit.outline("Output seal leaks");
        edit.focus(edit.text("Titled.title"));
        window.press(SWT.CR, SWT.CTRL);
        window.waitUntil("the next cause has the cursor", () -> edit.text("Titled.title").isFocusControl()
                && edit.text("Titled.title").getText().isEmpty());
        window.type("seal pressed in askew");
        window.waitUntil("the outline shows it", () -> selected().equals("seal pressed in askew"));
        assertTrue(saved(LORRY).contains("title=\"seal pressed in askew\""));
    }

    @Test
    void linesOfTextBecomeAccessesInOneEdit() {
        lorry();
        edit.outline("Accesses");
        var board = new Clipboard(Display.getCurrent());
        board.setContents(new Object[] {"radiator out\nbumper off\n"}, new Transfer[] {TextTransfer.getInstance()});
        board.dispose();
        edit.focus(tree());
        window.pressLetter('v', SWT.CTRL);
        window.waitUntil("they are there", () -> count("radiator out") == 1 && count("bumper off") == 1);
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("one undo takes both back", () -> count("radiator out") + count("bumper off") == 0);
    }

    @Test
    void aPastedAccessHasNewIds() throws Exception {
        lorry();
        edit.outline("Lorry over the pit");
        edit.focus(tree());
        window.pressLetter('c', SWT.CTRL);
        window.pressLetter('v', SWT.CTRL);
        window.waitUntil("it is there twice", () -> count("Lorry over the pit") == 2);
        var text = saved(LORRY);
        assertEquals(text.indexOf("id=\"over-pit-strip\""), text.lastIndexOf("id=\"over-pit-strip\""));
        assertNotEquals(text.indexOf("title=\"Drive over the pit\""), text.lastIndexOf("title=\"Drive over the pit\""));
    }

    private int count(String words) {
        int count = 0;
        for (var item : tree().getItem(0).getItem(1).getItems()) {
            count += item.getText().equals(words) ? 1 : 0;
        }
        return count;
    }

    @Test
    void aNeedThatGoesRoundInACircleIsRefusedBesideTheField() {
        lorry();
        edit.outline("Accesses");
        choose(tree().getMenu(), "Access");
        window.type("first thing off");
        window.waitUntil("it is named", () -> selected().equals("first thing off"));
        edit.click("Access.needs.add");
        edit.write("Need.anyOf", "second thing off");
        edit.focus(edit.text("Need.anyOf"));
        window.press(SWT.CR);
        window.waitUntil("it was made", () -> count("second thing off") == 1);
        edit.outline("second thing off");
        edit.click("Access.needs.add");
        edit.write("Need.anyOf", "first thing");
        window.press(SWT.CR);
        window.waitUntil("it says why not", () -> window.has("problem.Need.anyOf") && window.find("problem.Need.anyOf",
                Label.class).getText().contains("round in a circle"));
        window.screenshot("machine-circle");
        assertTrue(edit.head().startsWith("1 field is to be mended"));
    }

    @Test
    void hoursAreSplitIntoAnAccessAndUndoneInOne() throws Exception {
        splitFan();
        window.waitUntil("the sum is told", () -> window.find("split.sentence", Label.class).getText()
                .equals("Together 6.5 h, as the whole job was written down"));
        window.screenshot("split-dialog");
        window.find("split.ok", Button.class).notifyListeners(SWT.Selection, null);
        window.waitUntil("the procedure's way is shown", () -> edit.editor().getTitle().startsWith("Renew the bearings")
                && selected().equals("Fan in the machine"));
        assertEquals("3.5 h", edit.text("Work.minutesUsual").getText());
        window.screenshot("split-procedure");
        window.pressLetter('z', SWT.CTRL);
        edit.outline("Renew the bearings");
        assertEquals("6.5 h", edit.text("Procedure.wholeJobUsual").getText());
        window.pressLetter('z', SWT.CTRL, SWT.SHIFT);
        assertTrue(saved(BEARINGS).contains("<anyOf"));
        assertTrue(read(SWEEPER).contains("title=\"Suction fan out\""), "the machine is saved first");
        edit.open(SWEEPER, "quillfen-s6");
        edit.outline("Suction fan out");
        window.screenshot("split-machine");
        assertFalse(edit.editor().isDirty());
    }

    @Test
    void theDialogIsAnsweredWithoutTheMouse() {
        edit.open(BEARINGS, "renew-sweeper-fan-bearings");
        choose(tree().getMenu(), "Split the Hours");
        var name = window.find("split.name", Text.class);
        window.focus(name, name.getShell());
        window.type("fan out");
        window.press(SWT.TAB);
        window.waitUntil("the accesses there are already come next",
                () -> window.find("split.known", Table.class).isFocusControl());
        window.press(SWT.TAB);
        window.type("1 h");
        window.press(SWT.TAB);
        window.press(SWT.TAB);
        window.type("90 min");
        window.press(SWT.CR);
        window.waitUntil("the rest is for the work", () -> selected().equals("Fan in the machine")
                && edit.text("Work.minutesUsual").getText().equals("4 h"));
    }

    @Test
    void theNextProcedureFindsTheAccessByItsName() {
        splitFan();
        window.find("split.ok", Button.class).notifyListeners(SWT.Selection, null);
        window.workFor(200);
        edit.open("procedures/check-sweeper-fan-vibration.xmi", "check-sweeper-fan-vibration");
        choose(tree().getMenu(), "Split the Hours");
        var known = window.find("split.known", Table.class);
        int made = List.of(known.getItems()).stream().map(TableItem::getText).toList().indexOf("Suction fan out");
        assertTrue(made >= 0, "the access made a moment ago is offered");
        known.setSelection(made);
        known.notifyListeners(SWT.Selection, null);
        assertEquals("1.5 h", window.find("split.strip.usual", Text.class).getText());
        assertFalse(window.find("split.strip.usual", Text.class).isEnabled());
        window.find("split.ok", Button.class).getShell().close();
        choose(tree().getMenu(), "Add Way");
        edit.click("Way.needs.add");
        edit.write("Need.anyOf", "fan ou");
        assertTrue(window.find("Need.anyOf.choices", Table.class).getItem(0).getText().startsWith("Suction fan out"));
    }

    @Test
    void fromTheMachineOneOfItsProceduresIsChosen() {
        edit.open(SWEEPER, "quillfen-s6");
        choose(tree().getMenu(), "Split the Hours");
        var place = window.find("split.place", org.eclipse.swt.widgets.Combo.class);
        assertEquals(2, place.getItemCount());
        window.screenshot("split-from-machine");
        place.select(1);
        place.notifyListeners(SWT.Selection, null);
        assertTrue(window.find("split.whole", Label.class).getText().startsWith("Renew the bearings"));
        window.find("split.name", Text.class).setText("Cover off");
        window.find("split.strip.usual", Text.class).setText("4 h");
        window.find("split.refit.usual", Text.class).setText("soon");
        assertTrue(window.find("split.sentence", Label.class).getText().contains("'soon'"));
        assertFalse(window.find("split.ok", Button.class).isEnabled());
        window.find("split.refit.usual", Text.class).setText("2 h");
        window.find("split.ok", Button.class).notifyListeners(SWT.Selection, null);
        window.waitUntil("the machine is shown at it", () -> selected().equals("Cover off"));
    }

    @Test
    void aNewMachineGrowsFromItsFirstAccess() throws Exception {
        new EditOpener(EditDriver.page()).create(Kind.MACHINE, "Small crane");
        edit.outline("Accesses");
        choose(tree().getMenu(), "Access");
        window.waitUntil("its name has the cursor", () -> edit.text("Titled.title").isFocusControl());
        window.type("jib down");
        edit.write("Work.minutesUsual", "20 min");
        edit.outline("Strip, 20 min");
        edit.focus(tree());
        window.press(SWT.INSERT);
        window.waitUntil("a step is there", () -> selected().startsWith("1. "));
        var text = saved("machines/small-crane.xmi");
        assertTrue(text.contains("title=\"jib down\"") && text.contains("minutesUsual=\"20 min\""), text);
    }

    @Test
    void theDialogHasRoomInASmallWindow() {
        looks(Appearance.Mode.LIGHT, 800, 600, "small-light");
        looks(Appearance.Mode.DARK, 800, 600, "small-dark");
    }

    @Test
    void theDialogHasRoomInALargeDarkWindow() {
        looks(Appearance.Mode.DARK, 1440, 1000, "large-dark");
    }

    private void looks(Appearance.Mode mode, int width, int height, String name) {
        var size = window.shell().getSize();
        var appearance = PlatformUI.getWorkbench().getService(Appearance.class);
        try {
            appearance.choose(mode);
            window.shell().setSize(width, height);
            window.workFor(500);
            lorry();
            edit.outline("Friction plates");
            window.screenshot("component-" + name);
            edit.outline("Actuator and its bolts within reach");
            window.screenshot("access-" + name);
            splitFan();
            window.screenshot("split-" + name);
            var dialog = window.find("split.ok", Button.class).getShell();
            assertTrue(dialog.getSize().y <= height && dialog.getSize().x <= width, dialog.getSize().toString());
            dialog.close();
        } finally {
            EditDriver.page().closeAllEditors(false);
            appearance.choose(Appearance.Mode.LIGHT);
            window.shell().setSize(size);
        }
    }

    @Test
    void aUnitHasItsNumbersOptionsAndReadings() throws Exception {
        edit.open(UNIT, "lorry-14");
        edit.click("Unit.meters.add");
        edit.write("MeterReading.value", "far");
        assertTrue(window.find("problem.MeterReading.value", Label.class).getText().contains("'far'"));
        edit.write("MeterReading.value", "151300 km");
        window.screenshot("unit");
        assertTrue(saved(UNIT).contains("value=\"151300 km\""));
    }
}
