// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.BookFactory;
import org.benchlore.model.Component;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.compare.MergeConflict.What;
import org.junit.jupiter.api.Test;

/** What one side changed is taken; what both changed differently is a question. */
class MergeTest {

    private static Merge merge(Consumer<Procedure> mine, Consumer<Procedure> theirs) {
        var first = Samples.procedure();
        var second = Samples.procedure();
        mine.accept(first);
        theirs.accept(second);
        return new Merge(Optional.of(Samples.procedure()), first, second, new Words());
    }

    private static List<String> steps(MergeResult result) {
        return Samples.work((Procedure) result.element()).getSteps().stream().map(Step::getId).toList();
    }

    private static void addStep(Procedure procedure, int index, String name) {
        Samples.work(procedure).getSteps().add(index, Samples.step(name));
    }

    @Test
    void fieldsChangedOnOneSideEachAreBothTaken() {
        var result = merge(mine -> Samples.step(mine, 1).setText("mine"),
                theirs -> Samples.step(theirs, 1).setWhy("theirs")).result();
        var step = Samples.step((Procedure) result.element(), 1);
        assertEquals(List.of("mine", "theirs"), List.of(step.getText(), step.getWhy()));
        assertEquals(List.of(), result.conflicts());
    }

    @Test
    void oneFieldChangedDifferentlyIsAQuestionWithAllThreeValues() {
        var result = merge(mine -> mine.setTitle("mine"), theirs -> theirs.setTitle("theirs")).result();
        assertEquals(List.of(new MergeConflict(".title", What.VALUE, "title", "Renew the oil", "mine", "theirs")),
                result.conflicts());
        assertEquals("mine", result.element().getTitle());
        assertEquals(result.conflicts(), result.open());
    }

    @Test
    void anAnswerTakesTheirs() {
        var result = merge(mine -> mine.setTitle("mine"), theirs -> theirs.setTitle("theirs"))
                .decided(Map.of(".title", Side.THEIRS));
        assertEquals("theirs", result.element().getTitle());
        assertEquals(List.of(), result.open());
    }

    @Test
    void theSameChangeOnBothSidesIsNoQuestion() {
        var result = merge(mine -> mine.setTitle("new"), theirs -> theirs.setTitle("new")).result();
        assertEquals(List.of(), result.conflicts());
        assertEquals("new", result.element().getTitle());
    }

    @Test
    void additionsOfBothStandWhereEachSidePutThem() {
        var result = merge(mine -> addStep(mine, 1, "mine"), theirs -> addStep(theirs, 3, "theirs")).result();
        assertEquals(List.of("step-a", "step-mine", "step-b", "step-c", "step-theirs"), steps(result));
    }

    @Test
    void additionsInOnePlaceAreBothKeptMineFirst() {
        var result = merge(mine -> addStep(mine, 1, "mine"), theirs -> addStep(theirs, 1, "theirs")).result();
        assertEquals(List.of("step-a", "step-mine", "step-theirs", "step-b", "step-c"), steps(result));
    }

    @Test
    void anAdditionStaysBehindTheStepItFollowedWhenTheOtherSideMovesThat() {
        var result = merge(mine -> addStep(mine, 1, "mine"), theirs -> Samples.work(theirs).getSteps().move(2, 0)).result();
        assertEquals(List.of("step-b", "step-c", "step-a", "step-mine"), steps(result));
    }

    @Test
    void ordersChangedDifferentlyAreAQuestion() {
        var merge = merge(mine -> Samples.work(mine).getSteps().move(2, 0),
                theirs -> Samples.work(theirs).getSteps().move(0, 2));
        assertEquals(List.of(What.ORDER), merge.result().conflicts().stream().map(MergeConflict::what).toList());
        assertEquals(List.of("step-c", "step-a", "step-b"),
                steps(merge.decided(Map.of(merge.result().conflicts().get(0).id(), Side.THEIRS))));
    }

    @Test
    void whatOneSideRemovedAndTheOtherLeftAloneIsGone() {
        var result = merge(mine -> Samples.work(mine).getSteps().remove(1), theirs -> theirs.setTitle("x")).result();
        assertEquals(List.of("step-a", "step-c"), steps(result));
        assertEquals(List.of(), result.conflicts());
    }

    @Test
    void removedAgainstChangedIsAQuestion() {
        var merge = merge(mine -> Samples.work(mine).getSteps().remove(1), theirs -> Samples.step(theirs, 2).setText("changed"));
        var question = merge.result().conflicts().get(0);
        assertEquals(new MergeConflict("#step-b:removed", What.REMOVED_OR_CHANGED, "step 2", "Do b", "removed", "changed"),
                question);
        assertEquals(List.of("step-a", "step-c"), steps(merge.result()));
        assertEquals(List.of("step-a", "step-b", "step-c"), steps(merge.decided(Map.of(question.id(), Side.THEIRS))));
    }

    @Test
    void aStepThatTheOtherSideRefersToAnewIsNotRemovedWithoutAQuestion() {
        var merge = merge(mine -> Samples.work(mine).getSteps().remove(1), theirs -> {
            var outcome = BookFactory.eINSTANCE.createOutcome();
            outcome.setId("outcome");
            outcome.setGoTo(Samples.step(theirs, 2));
            Samples.step(theirs, 1).getOutcomes().add(outcome);
        });
        assertEquals(List.of("#step-b:removed"), merge.result().conflicts().stream().map(MergeConflict::id).toList());
        assertNull(Samples.step((Procedure) merge.result().element(), 1).getOutcomes().get(0).getGoTo());
        var kept = (Procedure) merge.decided(Map.of("#step-b:removed", Side.THEIRS)).element();
        assertSame(Samples.step(kept, 2), Samples.step(kept, 1).getOutcomes().get(0).getGoTo());
    }

    @Test
    void whatWasMovedOutOfARemovedElementStays() {
        var result = merge(mine -> Samples.step(mine, 1).getFastenings().add(Samples.plug(mine)),
                theirs -> Samples.step(theirs, 2).setText("x")).result();
        assertEquals("drain plug", Samples.step((Procedure) result.element(), 1).getFastenings().get(0).getPlace());
    }

    @Test
    void anElementMovedToTwoPlacesIsAQuestionAndStandsOnce() {
        var merge = merge(mine -> Samples.step(mine, 1).getFastenings().add(Samples.plug(mine)),
                theirs -> Samples.step(theirs, 2).getFastenings().add(Samples.plug(theirs)));
        assertEquals(List.of("#plug:place"), merge.result().conflicts().stream().map(MergeConflict::id).toList());
        var taken = (Procedure) merge.decided(Map.of("#plug:place", Side.THEIRS)).element();
        assertEquals(List.of(0, 1, 0), Samples.work(taken).getSteps().stream().map(step -> step.getFastenings().size()).toList());
    }

    @Test
    void elementsPutIntoEachOtherAreNotLost() {
        var base = machine();
        var mine = Samples.copy(base);
        mine.getComponents().get(0).getComponents().add(mine.getComponents().get(1));
        var theirs = Samples.copy(base);
        theirs.getComponents().get(1).getComponents().add(theirs.getComponents().get(0));
        var result = new Merge(Optional.of(base), mine, theirs, new Words()).result();
        assertEquals(What.PLACE, result.conflicts().get(0).what());
        assertEquals("two", ((Machine) result.element()).getComponents().get(0).getComponents().get(0).getId());
    }

    private static Machine machine() {
        var machine = BookFactory.eINSTANCE.createMachine();
        machine.setId("machine");
        machine.getComponents().add(component("one"));
        machine.getComponents().add(component("two"));
        return machine;
    }

    private static Component component(String id) {
        var component = BookFactory.eINSTANCE.createComponent();
        component.setId(id);
        return component;
    }

    @Test
    void elementsWithoutIdsAreFollowedByTheirContent() {
        var result = merge(mine -> Samples.plug(mine).getStages().add(Samples.stage("90 N·m")),
                theirs -> Samples.plug(theirs).getStages().get(0).setTorque(Samples.torque("46 N·m"))).result();
        assertEquals(List.of("46 N·m", "90 N·m"), Samples.plug((Procedure) result.element()).getStages().stream()
                .map(stage -> stage.getTorque().text()).toList());
    }

    @Test
    void wordsAddedOnBothSidesAreAllKeptAndTheSameWordOnce() {
        var result = merge(mine -> mine.getSymptoms().addAll(List.of("slips", "mine")),
                theirs -> theirs.getSymptoms().addAll(List.of("slips", "theirs"))).result();
        assertEquals(List.of("slips", "mine", "theirs"), ((Procedure) result.element()).getSymptoms());
    }

    @Test
    void twoPartsPutIntoAPlaceForOneAreAQuestion() {
        var result = merge(mine -> Samples.plug(mine).setPart(Samples.part("one")),
                theirs -> Samples.plug(theirs).setPart(Samples.part("two"))).result();
        assertEquals(List.of("step 3, fastening drain plug, part"),
                result.conflicts().stream().map(MergeConflict::place).toList());
    }

    @Test
    void versionsMadeAnewOnBothSidesAskForEachFieldThatDiffers() {
        var mine = Samples.procedure();
        mine.setTitle("mine");
        var result = new Merge(Optional.empty(), mine, Samples.procedure(), new Words()).result();
        assertEquals(List.of(".title"), result.conflicts().stream().map(MergeConflict::id).toList());
        assertEquals(3, steps(result).size());
    }

    @Test
    void theVersionsAreNotTouched() {
        var base = Samples.procedure();
        var mine = Samples.procedure();
        var theirs = Samples.procedure();
        new Merge(Optional.of(base), mine, theirs, new Words()).result();
        assertTrue(List.of(base, mine, theirs).stream().allMatch(one -> Same.deep(one, Samples.procedure())));
    }

    @Test
    void versionsOfDifferentElementsAreRefused() {
        var other = Samples.procedure();
        other.setId("another");
        assertThrows(IllegalArgumentException.class, () ->
                new Merge(Optional.empty(), Samples.procedure(), other, new Words()));
    }
}
