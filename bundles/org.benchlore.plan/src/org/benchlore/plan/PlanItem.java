// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.MachineState;
import org.benchlore.model.Skill;
import org.benchlore.model.TopElement;
import org.benchlore.model.Verification;
import org.benchlore.model.Work;

/**
 * One thing of a plan, in its place in the order.
 *
 * @param part where in the job it stands
 * @param id id of the access or the procedure
 * @param title what it is called
 * @param owner the machine of an access, or the procedure
 * @param work its body, with its steps and their hazards; empty for a proof and where none is written down
 * @param proof what proves the job, for a proof
 * @param change states the machine must be brought into first
 * @param minutes time by the clock
 * @param people how many it takes
 * @param skill who may do it
 * @param isAgain whether it is done a second time: because something must not be open with it, or the machine has run since
 */
public record PlanItem(Part part, String id, String title, TopElement owner, Optional<Work> work,
        Optional<Verification> proof, List<MachineState> change, Minutes minutes, int people, Skill skill,
        boolean isAgain) {

    /** Where in the job an item stands. */
    public enum Part {
        /** Before anything is opened. */
        BEFORE,
        /** Opening an access. */
        STRIP,
        /** What the job is for. */
        WORK,
        /** Closing an access. */
        REFIT,
        /** Once, after closing. */
        CLOSING,
        /** Before it is handed back. */
        PROOF
    }

    PlanItem changed(List<MachineState> states) {
        return new PlanItem(part, id, title, owner, work, proof, states, minutes, people, skill, isAgain);
    }

    PlanItem again() {
        return new PlanItem(part, id, title, owner, work, proof, change, minutes, people, skill, true);
    }
}
