// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.BookFactory;
import org.benchlore.model.Procedure;
import org.benchlore.model.Recorded;
import org.benchlore.model.compare.Difference.Change;
import org.junit.jupiter.api.Test;

/** Differences are told in words, by id and field. */
class DifferencesTest {

    private static List<Difference> after(Consumer<Procedure> edit) {
        var changed = Samples.procedure();
        edit.accept(changed);
        return Differences.between(Samples.procedure(), changed, new Words());
    }

    @Test
    void thereAreNoneBetweenEqualVersions() {
        assertEquals(List.of(), after(procedure -> { }));
    }

    @Test
    void aChangedTorqueIsToldWithItsPlaceAndBothValues() {
        assertEquals(List.of(new Difference(Change.CHANGED, "step 3, fastening drain plug, tightening torque", "45 N·m",
                "50 N·m")), after(procedure -> Samples.plug(procedure).getStages().get(0).setTorque(Samples.torque("50 N·m"))));
    }

    @Test
    void theSameQuantityInAnotherUnitIsAnotherText() {
        assertEquals("4500 cN·m", after(procedure ->
                Samples.plug(procedure).getStages().get(0).setTorque(Samples.torque("4500 cN·m"))).get(0).after());
    }

    @Test
    void anInsertedStageChangesNoOther() {
        assertEquals(List.of(new Difference(Change.ADDED, "step 3, fastening drain plug, stage 1", "nothing",
                "torque, 10 N·m")), after(procedure -> Samples.plug(procedure).getStages().add(0, Samples.stage("10 N·m"))));
    }

    @Test
    void anAddedStepIsToldOnceNotFieldByField() {
        assertEquals(List.of(new Difference(Change.ADDED, "step 2", "nothing", "Do d")),
                after(procedure -> Samples.work(procedure).getSteps().add(1, Samples.step("d"))));
    }

    @Test
    void aRemovedStepIsToldWithWhatItSaid() {
        assertEquals(List.of(new Difference(Change.REMOVED, "step 2", "Do b", "nothing")),
                after(procedure -> Samples.work(procedure).getSteps().remove(1)));
    }

    @Test
    void onlyTheStepThatMovedIsCalledMoved() {
        assertEquals(List.of(new Difference(Change.MOVED, "step 3", "number 1", "number 3")),
                after(procedure -> Samples.work(procedure).getSteps().move(2, 0)));
    }

    @Test
    void aFasteningPutIntoAnotherStepMoved() {
        assertEquals(List.of(new Difference(Change.MOVED, "step 1, fastening drain plug", "step 3, fastening drain plug",
                "step 1, fastening drain plug")),
                after(procedure -> Samples.step(procedure, 1).getFastenings().add(Samples.plug(procedure))));
    }

    @Test
    void wordsOfTheModelAreToldInPlainWords() {
        assertEquals(List.of(new Difference(Change.CHANGED, "hazards recorded", "not recorded", "none")),
                after(procedure -> Samples.work(procedure).setHazardsRecorded(Recorded.NONE)));
    }

    @Test
    void aReferenceIsToldByTheTitleOfWhatItLeadsTo() {
        var changed = Samples.procedure();
        Samples.plug(changed).setPart(Samples.part("seal-7"));
        var words = new Words(address -> Optional.of("title of " + address.path()));
        assertEquals(List.of(new Difference(Change.ADDED, "step 3, fastening drain plug, part", "nothing",
                "title of parts/seal-7.xmi")), Differences.between(Samples.procedure(), changed, words));
    }

    @Test
    void theSecondOfTwoWaysIsNamed() {
        var procedure = Samples.procedure();
        var way = BookFactory.eINSTANCE.createWay();
        way.setId("way-2");
        way.setTitle("from below");
        way.setWork(BookFactory.eINSTANCE.createWork());
        procedure.getWays().add(way);
        var changed = Samples.copy(procedure);
        changed.getWays().get(1).getWork().setTitle("x");
        assertEquals("way from below, title", Differences.between(procedure, changed, new Words()).get(0).place());
    }
}
