// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Consumer;

import org.benchlore.model.Procedure;
import org.junit.jupiter.api.Test;

/** What changed, as one says it. */
class SentencesTest {

    private static List<String> after(Consumer<Procedure> edit) {
        var changed = Samples.procedure();
        edit.accept(changed);
        return Sentences.between(Samples.procedure(), changed, new Words());
    }

    @Test
    void aTorqueIsToldWithItsUnitOnce() {
        assertEquals(List.of("tightening torque of fastening drain plug, step 3, from 45 to 50 N·m"),
                after(procedure -> Samples.plug(procedure).getStages().get(0).setTorque(Samples.torque("50 N·m"))));
    }

    @Test
    void anotherUnitIsToldWithBoth() {
        assertEquals(List.of("tightening torque of fastening drain plug, step 3, from 45 N·m to 4500 cN·m"),
                after(procedure -> Samples.plug(procedure).getStages().get(0).setTorque(Samples.torque("4500 cN·m"))));
    }

    @Test
    void anAddedStepIsToldWithWhatItSays() {
        assertEquals(List.of("step 2 added: Do d"), after(procedure -> Samples.work(procedure).getSteps().add(1, Samples.step("d"))));
    }

    @Test
    void aRemovedStepIsToldWithWhatItSaid() {
        assertEquals(List.of("step 2 removed: Do b"), after(procedure -> Samples.work(procedure).getSteps().remove(1)));
    }

    @Test
    void aStepThatMovedIsToldByItsNumbers() {
        assertEquals(List.of("step 3 moved from number 1 to number 3"),
                after(procedure -> Samples.work(procedure).getSteps().move(2, 0)));
    }

    @Test
    void ofALongTextOnlyTheWordsThatDifferAreTold() {
        var before = Samples.procedure();
        Samples.step(before, 1).setText("Let the reading unit hold 4 bar until no bubble comes, then close it by hand and wait.");
        var changed = Samples.copy(before);
        Samples.step(changed, 1).setText("Let the reading unit hold 6 bar until no bubble comes, then close it by hand and wait.");
        assertEquals(List.of("text of step 1, from '…4…' to '…6…'"), Sentences.between(before, changed, new Words()));
    }

    @Test
    void equalVersionsSayNothing() {
        assertEquals(List.of(), after(procedure -> { }));
    }
}
