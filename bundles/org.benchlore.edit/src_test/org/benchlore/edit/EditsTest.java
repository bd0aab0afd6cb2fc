// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Element;
import org.benchlore.model.Outcome;
import org.benchlore.model.Procedure;
import org.benchlore.model.Recorded;
import org.benchlore.model.Step;
import org.benchlore.model.Work;
import org.benchlore.store.LibraryException;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be done to an element, and what is refused. */
class EditsTest {

    private static final String PACK = "procedures/renew-pto-clutch-pack.xmi";

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Sessions sessions;
    private EditSession session;
    private Work work;

    @BeforeEach
    void open() throws LibraryException {
        demo = new DemoCopy(folder);
        sessions = demo.sessions();
        session = sessions.open(PACK);
        work = ((Procedure) session.element()).getWays().get(0).getWork();
    }

    private InnerEdits inner() {
        return session.edits().inner();
    }

    private void assertUndoneToTheFile() {
        while (session.undoLabel().isPresent()) {
            session.undo();
        }
        assertEquals(demo.text(session.path()), new String(session.bytes(), java.nio.charset.StandardCharsets.UTF_8));
    }

    private void assertSavedWholeWithEveryIdOnce() throws LibraryException {
        assertTrue(session.save() instanceof SaveResult.Saved);
        assertEquals(List.of(), sessions.library().problems());
        var ids = new HashSet<String>();
        session.element().eAllContents().forEachRemaining(one -> {
            if (one instanceof Element element) {
                assertTrue(ids.add(element.getId()), element.getId());
            }
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Stage|torque|45 bar|'45 bar' is a pressure, but a torque belongs here",
        "Stage|torque|45|'45' has no unit",
        "Work|minutesUsual|20 mm|'20 mm' is a length, but a time belongs here",
        "FieldNote|date|18.09.2026|'18.09.2026' is no day: write it as 2026-11-25",
        "FieldNote|status|proved|'proved' is not one of the words for this: choose one of unsorted, suspected",
        "Fastening|count|three|'three' is no count: write a whole number such as 4",
        "Step|signOff|perhaps|'perhaps' is neither yes nor no",
        "Part|price|EUR 9|'EUR 9' does not start with a number"})
    void nonsenseIsRefusedWithAPlainSentence(String type, String field, String typed, String sentence) {
        var attribute = (EAttribute) ((EClass) BookPackage.eINSTANCE.getEClassifier(type)).getEStructuralFeature(field);
        var problem = FieldText.problem(attribute, typed);
        assertTrue(problem.orElse("no problem").startsWith(sentence), problem.orElse("no problem"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Stage|torque| 45 N·m |45 N·m", "FieldNote|status|held|HELD",
        "Work|minutesUsual|1 h 30 min|1 h 30 min", "Step|signOff|yes|true", "FieldNote|meter|2655 h|2655 h",
        "Hazard|kind|'two\nlines'|two lines"})
    void whatIsTypedBecomesTheModelsValue(String type, String field, String typed, String value) {
        var attribute = (EAttribute) ((EClass) BookPackage.eINSTANCE.getEClassifier(type)).getEStructuralFeature(field);
        assertEquals(value, FieldText.read(attribute, typed).orElseThrow().toString());
    }

    @Test
    void charactersThatNoFileCanHoldAreLeftOut() {
        assertEquals(Optional.of("ab\nc"), FieldText.read(Literals.FIELD_NOTE__TEXT, "a\u0000b\r\nc\uffff"));
    }

    @Test
    void theIdStaysAsItIs() {
        assertThrows(IllegalArgumentException.class, () ->
                session.edits().text(session.element(), Literals.ELEMENT__ID, "another"));
    }

    @Test
    void emptyingAFieldClearsIt() {
        session.execute(session.edits().text(work, Literals.WORK__MINUTES_BAD, " "));
        assertFalse(work.eIsSet(Literals.WORK__MINUTES_BAD));
        assertUndoneToTheFile();
    }

    @Test
    void aReferenceStaysUnresolvedAndTheLibraryFollowsIt() throws LibraryException {
        var address = Address.parse("machines/dravholm-hl26.xmi#pto-actuator");
        session.execute(session.edits().reference(session.element(), Literals.PROCEDURE__COMPONENT, Optional.of(address)));
        var component = ((Procedure) session.element()).getComponent();
        assertTrue(component.eIsProxy());
        assertEquals(Optional.of(address), session.library().addressOf(component));
        assertTrue(session.library().resolve(component).isPresent());
        assertSavedWholeWithEveryIdOnce();
    }

    @Test
    void aReferenceIsClearedAndComesBackWithUndo() {
        session.execute(session.edits().reference(session.element(), Literals.PROCEDURE__COMPONENT, Optional.empty()));
        assertNull(((Procedure) session.element()).getComponent());
        assertUndoneToTheFile();
    }

    @Test
    void addingAReferenceThatIsThereDoesNothing() {
        var codes = ((Procedure) session.element()).getCodes();
        var there = session.library().addressOf(codes.get(0)).orElseThrow();
        assertEquals(Optional.empty(), session.edits().addReference(session.element(), Literals.PROCEDURE__CODES, there)
                .command());
    }

    @Test
    void aNewStepGetsAnIdOfItsOwnByTheLibrarysRules() throws LibraryException {
        var adding = inner().add(work, Literals.WORK__STEPS, Literals.STEP, 1);
        session.execute(adding.edit());
        assertSame(adding.element(), work.getSteps().get(1));
        assertTrue(work.getSteps().get(1).getId().matches("step-[a-z2-9]{4}"), work.getSteps().get(1).getId());
        assertSavedWholeWithEveryIdOnce();
    }

    @Test
    void anElementIsRefusedWhereItDoesNotBelong() {
        assertThrows(IllegalArgumentException.class, () -> inner().add(work, Literals.WORK__STEPS, Literals.HAZARD, 0));
    }

    @Test
    void aRemovedStepTakesTheReferencesToItAlong() throws LibraryException {
        var target = work.getSteps().stream().flatMap(step -> step.getOutcomes().stream()).map(Outcome::getGoTo)
                .filter(java.util.Objects::nonNull).findFirst().orElseThrow();
        session.execute(inner().remove(target));
        session.element().eAllContents().forEachRemaining(one ->
                assertFalse(one instanceof Outcome outcome && outcome.getGoTo() == target));
        assertUndoneToTheFile();
        session.redo();
        assertTrue(session.save() instanceof SaveResult.Saved);
    }

    @Test
    void aStepIsMovedAndBackAgain() {
        var step = work.getSteps().get(0);
        session.execute(inner().move(step, 3));
        assertEquals(3, work.getSteps().indexOf(step));
        assertEquals(Optional.of("move step 1"), session.undoLabel());
        assertUndoneToTheFile();
    }

    @Test
    void aMoveBeyondTheEndGoesToTheEnd() {
        var step = work.getSteps().get(0);
        session.execute(inner().move(step, 1000));
        assertSame(step, work.getSteps().get(work.getSteps().size() - 1));
    }

    @Test
    void aHazardIsMovedToAnotherStepWithItsId() throws LibraryException {
        var from = work.getSteps().stream().filter(step -> !step.getFastenings().isEmpty()).findFirst().orElseThrow();
        var fastening = from.getFastenings().get(0);
        var id = fastening.getId();
        session.execute(inner().moveTo(fastening, work.getSteps().get(0), Literals.STEP__FASTENINGS, InnerEdits.END));
        assertSame(work.getSteps().get(0), fastening.eContainer());
        assertEquals(id, fastening.getId());
        assertUndoneToTheFile();
    }

    @Test
    void aDuplicateStandsBehindItsOriginalWithNewIds() throws LibraryException {
        var step = work.getSteps().stream().filter(one -> !one.getFastenings().isEmpty()).findFirst().orElseThrow();
        var copy = inner().duplicate(step);
        session.execute(copy.edit());
        assertEquals(work.getSteps().indexOf(step) + 1, work.getSteps().indexOf(copy.element()));
        assertEquals(step.getText(), ((Step) copy.element()).getText());
        assertNotEquals(step.getId(), ((Step) copy.element()).getId());
        assertSavedWholeWithEveryIdOnce();
    }

    @Test
    void aPastedWayLeadsWithinItselfAndNotIntoTheOriginal() throws LibraryException {
        var way = ((Procedure) session.element()).getWays().get(0);
        var pasted = inner().paste(Clip.of(session, way), session.element(), Literals.PROCEDURE__WAYS, InnerEdits.END);
        session.execute(pasted.edit());
        pasted.element().eAllContents().forEachRemaining(one -> {
            if (one instanceof Outcome outcome && outcome.getGoTo() != null) {
                assertTrue(NewIds.isWithin(outcome.getGoTo(), pasted.element()));
            }
        });
        assertSavedWholeWithEveryIdOnce();
    }

    @Test
    void linksInPastedTextsFollowThePastedSteps() throws LibraryException {
        session = sessions.open("procedures/bleed-pto-engagement-circuit.xmi");
        var way = ((Procedure) session.element()).getWays().get(0);
        var pasted = inner().paste(Clip.of(session, way), session.element(), Literals.PROCEDURE__WAYS, InnerEdits.END);
        session.execute(pasted.edit());
        var all = new String(session.bytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(1, all.split("\\{step:step-b7kw}", -1).length - 1);
        assertEquals(2, all.split("Repeat \\{step:", -1).length - 1);
    }

    @Test
    void aStepPastedIntoAnotherProcedureHasNoGoToIntoItsOldOne() throws LibraryException {
        var step = work.getSteps().stream().filter(one -> one.getOutcomes().stream().anyMatch(o -> o.getGoTo() != null))
                .findFirst().orElseThrow();
        var clip = Clip.of(session, step);
        session = sessions.open(DemoCopy.PROCEDURE);
        var target = ((Procedure) session.element()).getWays().get(0).getWork();
        var pasted = inner().paste(clip, target, Literals.WORK__STEPS, 0);
        session.execute(pasted.edit());
        assertTrue(((Step) pasted.element()).getOutcomes().stream().allMatch(outcome -> outcome.getGoTo() == null));
        assertFalse(step.getOutcomes().stream().allMatch(outcome -> outcome.getGoTo() == null));
        assertSavedWholeWithEveryIdOnce();
    }

    @Test
    void noneIsRefusedWhereSomethingStands() {
        assertThrows(IllegalArgumentException.class, () ->
                session.edits().recorded(work, Literals.WORK__TOOLS, Recorded.NONE));
    }

    @Test
    void listedIsRefusedWhereNothingStands() {
        var empty = BookFactory.eINSTANCE.createWork();
        assertThrows(IllegalArgumentException.class, () ->
                session.edits().recorded(empty, Literals.WORK__HAZARDS, Recorded.LISTED));
    }

    @Test
    void noneAndNotRecordedAreTwoThings() {
        var way = inner().add(session.element(), Literals.PROCEDURE__WAYS, Literals.WAY, InnerEdits.END);
        session.execute(way.edit());
        var fresh = inner().add(way.element(), Literals.WAY__WORK, Literals.WORK, InnerEdits.END);
        session.execute(fresh.edit());
        var added = (Work) fresh.element();
        assertEquals(Recorded.NOT_RECORDED, added.getHazardsRecorded());
        session.execute(session.edits().text(added, Literals.WORK__HAZARDS_RECORDED, "none"));
        assertEquals(Recorded.NONE, added.getHazardsRecorded());
    }

    @Test
    void aListThatSaidNoneSaysSoNoLongerOnceSomethingIsAdded() {
        var closing = BookFactory.eINSTANCE.createCondition();
        session.execute(session.edits().value(work, Literals.WORK__CONDITIONS_RECORDED, null));
        work.getConditions().clear();
        session.execute(session.edits().recorded(work, Literals.WORK__CONDITIONS, Recorded.NONE));
        session.execute(inner().add(work, Literals.WORK__CONDITIONS, closing, 0).edit());
        assertEquals(Recorded.NOT_RECORDED, work.getConditionsRecorded());
        session.undo();
        assertEquals(Recorded.NONE, work.getConditionsRecorded());
    }

    @Test
    void linesBecomeValuesAndEmptyOnesArePassedOver() {
        session.execute(session.edits().lines(session.element(), Literals.PROCEDURE__SYMPTOMS, List.of("slips", "", "slips")));
        assertEquals(List.of("slips", "slips"), ((Procedure) session.element()).getSymptoms());
        assertUndoneToTheFile();
    }

    @Test
    void severalEditsAreOne() {
        session.execute(Edits.all("fill in", List.of(
                session.edits().text(session.element(), Literals.TOP_ELEMENT__TITLE, "new"),
                session.edits().text(work, Literals.TITLED__TITLE, "new"))));
        assertEquals(Optional.of("fill in"), session.undoLabel());
        session.undo();
        assertFalse(session.isDirty());
    }
}
