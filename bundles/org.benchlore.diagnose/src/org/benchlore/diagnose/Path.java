// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;

/**
 * The way that was gone, to be kept in the job record or in a new note.
 *
 * @param symptoms what was noticed
 * @param codes the library's codes among those given
 * @param codesAsWritten codes that the library does not hold
 * @param about the machine or unit asked about
 * @param during the work that did not cure, if any
 * @param job the job record it was done in, if there is one
 * @param steps what was checked and found, in order
 * @param leading the cause that leads now
 * @param component where it sits
 * @param isFound whether a check pointed at it and it is more likely than not: a conclusion, not only the first of a list
 */
public record Path(List<String> symptoms, List<Address> codes, List<String> codesAsWritten, Address about,
        Optional<Address> during, Optional<Address> job, List<Step> steps, Optional<Named> leading, Optional<Address> component,
        boolean isFound) {

    /**
     * One check with its answer.
     *
     * @param check what was checked
     * @param result what was found
     * @param recorded whether it comes from the job record
     */
    public record Step(Named check, String result, boolean recorded) {
    }

    /**
     * Returns the way in words, one line for each check, for a finding or a note.
     *
     * @return the text, empty if nothing was checked
     */
    public String text() {
        return text(steps);
    }

    /**
     * Returns what was checked now in words, for the job record that holds the rest.
     *
     * @return the text, empty if nothing was checked beside what the record holds
     */
    public String added() {
        return text(steps.stream().filter(step -> !step.recorded()).toList());
    }

    private String text(List<Step> told) {
        var lines = new ArrayList<String>();
        for (var step : told) {
            lines.add(step.check().title() + ": " + step.result() + (step.recorded() ? " (from the job record)" : ""));
        }
        if (!lines.isEmpty()) {
            leading.ifPresent(cause -> lines.add("Points to: " + cause.title()));
        }
        return String.join("\n", lines);
    }
}
