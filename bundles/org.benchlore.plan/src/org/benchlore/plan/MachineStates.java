// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.benchlore.model.MachineState;

/** The state a machine is in while a plan goes on: of each sort of state there is one at a time. */
final class MachineStates {

    /** States of one sort exclude each other. */
    enum Sort {
        BATTERY, HEAT, PRESSURE, FILLING, HEIGHT, MOTION
    }

    private final Map<Sort, MachineState> now = new EnumMap<>(Sort.class);

    static Sort sort(MachineState state) {
        return switch (state) {
            case BATTERY_OFF, BATTERY_ON, BATTERY_ON_SUPPORT -> Sort.BATTERY;
            case HOT, COLD -> Sort.HEAT;
            case PRESSURE_RELIEVED, UNDER_PRESSURE -> Sort.PRESSURE;
            case DRAINED, FILLED -> Sort.FILLING;
            case RAISED, ON_WHEELS -> Sort.HEIGHT;
            case RUNNING, STOPPED -> Sort.MOTION;
            case NOT_RECORDED -> null;
        };
    }

    /** What must be changed before work that asks for some states; the states of a work that says nothing stay. */
    List<MachineState> changes(List<MachineState> wanted) {
        var changes = new ArrayList<MachineState>();
        for (var state : complete(wanted)) {
            if (now.get(sort(state)) != state) {
                changes.add(state);
            }
        }
        return changes;
    }

    /** A machine runs with its battery on and filled, and without its battery it stands. */
    private List<MachineState> complete(List<MachineState> wanted) {
        var all = new ArrayList<>(wanted.stream().filter(state -> sort(state) != null).distinct().sorted().toList());
        boolean isBatterySaid = all.stream().anyMatch(state -> sort(state) == Sort.BATTERY);
        if (all.contains(MachineState.RUNNING) && !isBatterySaid && now.get(Sort.BATTERY) == MachineState.BATTERY_OFF) {
            all.add(0, MachineState.BATTERY_ON);
        }
        boolean isFillingSaid = all.stream().anyMatch(state -> sort(state) == Sort.FILLING);
        if (all.contains(MachineState.RUNNING) && !isFillingSaid
                && now.get(Sort.FILLING) == MachineState.DRAINED) {
            all.add(0, MachineState.FILLED);
        }
        if (all.contains(MachineState.BATTERY_OFF) && all.stream().noneMatch(state -> sort(state) == Sort.MOTION)
                && now.get(Sort.MOTION) == MachineState.RUNNING) {
            all.add(MachineState.STOPPED);
        }
        return all;
    }

    void enter(List<MachineState> wanted) {
        var all = complete(wanted);
        all.forEach(state -> now.put(sort(state), state));
        if (all.contains(MachineState.RUNNING)) {
            lapse(all, MachineState.PRESSURE_RELIEVED);
            lapse(all, MachineState.COLD);
        }
    }

    /** What has run is neither cold nor without pressure until somebody sees to it again. */
    private void lapse(List<MachineState> said, MachineState state) {
        if (!said.contains(state) && now.get(sort(state)) == state) {
            now.remove(sort(state));
        }
    }

    /** Two states of one work that exclude each other, empty if there are none. */
    static List<MachineState> contradiction(List<MachineState> wanted) {
        for (var one : wanted) {
            for (var other : wanted) {
                if (one != other && sort(one) != null && sort(one) == sort(other)
                        || one == MachineState.RUNNING && other == MachineState.BATTERY_OFF) {
                    return List.of(one, other);
                }
            }
        }
        return List.of();
    }
}
