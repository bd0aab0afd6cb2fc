// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.Finding;
import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.book.Replies.Answered;
import org.benchlore.model.Address;
import org.benchlore.model.Function;

/**
 * A question with everything of the library that bears on it.
 *
 * @param about the machine or the unit asked about
 * @param unit the unit, if one was named
 * @param book the machine
 * @param file its papers
 * @param words compares symptoms
 * @param weights what things count for
 * @param findings symptoms and codes
 * @param work the work that did not cure, if any
 * @param failing the function that fails, as far as it can be told
 * @param probes the checks of the machine
 * @param openings what must be open for them
 * @param answered checks with their answers
 */
public record CaseInHand(Named about, Optional<Address> unit, MachineBook book, CaseFile file, SymptomWords words,
        Weights weights, List<Finding> findings, Optional<WorkDone> work, Optional<Function> failing, Probes probes,
        Openings openings, List<Answered> answered) {

    /**
     * Returns the job record in hand.
     *
     * @return its address, or empty
     */
    public Optional<Address> job() {
        return work.flatMap(WorkDone::job).flatMap(book.library()::addressOf);
    }
}
