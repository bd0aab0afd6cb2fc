// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import static org.benchlore.model.MachineState.BATTERY_OFF;
import static org.benchlore.model.MachineState.BATTERY_ON;
import static org.benchlore.model.MachineState.BATTERY_ON_SUPPORT;
import static org.benchlore.model.MachineState.COLD;
import static org.benchlore.model.MachineState.DRAINED;
import static org.benchlore.model.MachineState.FILLED;
import static org.benchlore.model.MachineState.HOT;
import static org.benchlore.model.MachineState.NOT_RECORDED;
import static org.benchlore.model.MachineState.ON_WHEELS;
import static org.benchlore.model.MachineState.PRESSURE_RELIEVED;
import static org.benchlore.model.MachineState.RAISED;
import static org.benchlore.model.MachineState.RUNNING;
import static org.benchlore.model.MachineState.STOPPED;
import static org.benchlore.model.MachineState.UNDER_PRESSURE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.Stream;

import org.benchlore.model.MachineState;
import org.benchlore.plan.MachineStates.Sort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What must be changed on a machine before work that asks for a state. Common practice, no source. */
class MachineStatesTest {

    private final MachineStates states = new MachineStates();

    static Stream<Arguments> pairs() {
        return Stream.of(Arguments.of(Sort.BATTERY, List.of(BATTERY_OFF, BATTERY_ON, BATTERY_ON_SUPPORT)),
                Arguments.of(Sort.HEAT, List.of(HOT, COLD)), Arguments.of(Sort.PRESSURE, List.of(PRESSURE_RELIEVED, UNDER_PRESSURE)),
                Arguments.of(Sort.FILLING, List.of(DRAINED, FILLED)), Arguments.of(Sort.HEIGHT, List.of(RAISED, ON_WHEELS)),
                Arguments.of(Sort.MOTION, List.of(RUNNING, STOPPED)));
    }

    private List<MachineState> after(List<MachineState> before, MachineState... wanted) {
        states.enter(before);
        return states.changes(List.of(wanted));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void ofEachSortThereIsOneAtATime(Sort sort, List<MachineState> some) {
        some.forEach(state -> assertEquals(sort, MachineStates.sort(state)));
        assertEquals(some.subList(0, 2), MachineStates.contradiction(some));
        assertEquals(List.of(some.get(1)), after(List.of(some.get(0)), some.get(1)));
        assertEquals(List.of(), after(List.of(some.get(1)), some.get(1)));
    }

    @Test
    void whatIsNotRecordedAsksForNothing() {
        assertNull(MachineStates.sort(NOT_RECORDED));
        assertEquals(List.of(), states.changes(List.of(NOT_RECORDED)));
        assertEquals(List.of(), MachineStates.contradiction(List.of(NOT_RECORDED, HOT, RAISED)));
    }

    @Test
    void eachChangeIsNamedOnceInTheOrderOfTheBook() {
        assertEquals(List.of(HOT, RAISED), states.changes(List.of(RAISED, HOT, RAISED)));
    }

    @Test
    void workThatSaysNothingLeavesTheMachineAsItIs() {
        states.enter(List.of(HOT, DRAINED));
        states.enter(List.of());
        assertEquals(List.of(COLD), states.changes(List.of(COLD, DRAINED)));
    }

    @Test
    void aMachineRunsWithItsBatteryOn() {
        assertEquals(List.of(BATTERY_ON, RUNNING), after(List.of(BATTERY_OFF), RUNNING));
        assertEquals(List.of(BATTERY_ON_SUPPORT, RUNNING), states.changes(List.of(RUNNING, BATTERY_ON_SUPPORT)), "that is on as well");
        assertEquals(List.of(RUNNING), after(List.of(BATTERY_ON_SUPPORT), RUNNING));
    }

    @Test
    void aMachineRunsFilled() {
        assertEquals(List.of(FILLED, RUNNING), after(List.of(DRAINED), RUNNING));
        assertEquals(List.of(RUNNING), states.changes(List.of(RUNNING, DRAINED)), "its page says so");
        assertEquals(List.of(RUNNING), after(List.of(FILLED), RUNNING));
        assertEquals(List.of(FILLED, RUNNING), after(List.of(DRAINED, STOPPED), FILLED, RUNNING), "once, though its page says it too");
        assertEquals(List.of(HOT), after(List.of(DRAINED), HOT), "hot alone does not fill it");
    }

    @Test
    void withoutItsBatteryAMachineStands() {
        assertEquals(List.of(BATTERY_OFF, STOPPED), after(List.of(RUNNING), BATTERY_OFF));
        states.enter(List.of(BATTERY_OFF));
        assertEquals(List.of(), states.changes(List.of(STOPPED)));
        assertEquals(List.of(BATTERY_ON, RUNNING), states.changes(List.of(RUNNING)));
        assertEquals(List.of(BATTERY_OFF), after(List.of(BATTERY_ON, STOPPED), BATTERY_OFF));
    }

    @Test
    void aMachineOfWhichNothingIsKnownIsNotSwitchedOnOrFilledForARun() {
        assertEquals(List.of(RUNNING), states.changes(List.of(RUNNING)));
        assertEquals(List.of(BATTERY_OFF), states.changes(List.of(BATTERY_OFF)));
    }

    @Test
    void runningWithoutABatteryIsAContradictionWhateverStandsFirst() {
        assertEquals(List.of(RUNNING, BATTERY_OFF), MachineStates.contradiction(List.of(RUNNING, BATTERY_OFF)));
        assertEquals(List.of(RUNNING, BATTERY_OFF), MachineStates.contradiction(List.of(BATTERY_OFF, RUNNING)));
        assertEquals(List.of(), MachineStates.contradiction(List.of(RUNNING, BATTERY_ON)));
        assertEquals(List.of(), MachineStates.contradiction(List.of(STOPPED, BATTERY_OFF)));
    }

    @Test
    void whatHasRunIsNeitherColdNorWithoutPressureUnlessItsPageSaysSo() {
        assertEquals(List.of(COLD, PRESSURE_RELIEVED), afterRunning(List.of(COLD, PRESSURE_RELIEVED), RUNNING));
        assertEquals(List.of(), afterRunning(List.of(COLD, PRESSURE_RELIEVED), RUNNING, COLD, PRESSURE_RELIEVED));
        assertEquals(List.of(COLD, PRESSURE_RELIEVED), afterRunning(List.of(HOT, UNDER_PRESSURE), RUNNING));
    }

    private List<MachineState> afterRunning(List<MachineState> before, MachineState... run) {
        states.enter(before);
        states.enter(List.of(run));
        return states.changes(List.of(COLD, PRESSURE_RELIEVED));
    }
}
