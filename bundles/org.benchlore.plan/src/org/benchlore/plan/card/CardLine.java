// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Fastening;
import org.benchlore.model.Hazard;
import org.benchlore.model.MachineState;
import org.benchlore.model.Measurement;
import org.benchlore.model.Verification;
import org.benchlore.plan.Minutes;
import org.benchlore.plan.PlanItem;

/** One line of a job card, in the order in which it is worked through. */
public sealed interface CardLine {

    /**
     * Something begins that has hazards or boxes of its own.
     *
     * @param part where in the job it stands
     * @param title what it is called
     * @param place the procedure, or the machine of an access
     * @param change states the machine must be brought into first
     */
    record Begin(PlanItem.Part part, String title, Address place, List<MachineState> change) implements CardLine {
    }

    /**
     * A hazard of what follows.
     *
     * @param hazard the hazard, with consequence and avoidance
     */
    record Caution(Hazard hazard) implements CardLine {
    }

    /**
     * A box for a measured value.
     *
     * @param at where the measurement stands
     * @param asked the measurement
     */
    record Value(Address at, Measurement asked) implements CardLine {
    }

    /**
     * A box for a tightened fastening.
     *
     * @param at where the fastening stands
     * @param asked the fastening
     */
    record Torque(Address at, Fastening asked) implements CardLine {
    }

    /**
     * What is ticked when it is done, with time and name.
     *
     * @param part where in the job it stands
     * @param title what it is called
     * @param place the procedure or the access
     * @param before how many lines of the round tick the same before this one
     * @param begun whether a {@link Begin} said its title already
     * @param change states the machine must be brought into first
     * @param minutes time by the plan; none for what was not planned
     * @param people how many by the plan
     * @param renewed components that its work always renews
     * @param fitted parts that its work always takes
     * @param item what was planned; empty for what was done without being planned
     */
    record Task(PlanItem.Part part, String title, Address place, int before, boolean begun, List<MachineState> change,
            Minutes minutes, int people, List<Address> renewed, List<Address> fitted, Optional<PlanItem> item)
            implements CardLine {
    }

    /**
     * How the work is proved before it is handed back.
     *
     * @param title the procedure that asks for it
     * @param proof what to do and what must be seen
     */
    record Proof(String title, Verification proof) implements CardLine {
    }
}
