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
 * @param during the work that did not cure, if any
 * @param steps what was checked and found, in order
 * @param leading the cause that leads now
 * @param component where it sits
 */
public record Path(List<String> symptoms, List<Address> codes, List<String> codesAsWritten, Optional<Address> during,
        List<Step> steps, Optional<Named> leading, Optional<Address> component) {

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
        var lines = new ArrayList<String>();
        for (var step : steps) {
            lines.add(step.check().title() + ": " + step.result() + (step.recorded() ? " (from the job record)" : ""));
        }
        if (!lines.isEmpty()) {
            leading.ifPresent(cause -> lines.add("Points to: " + cause.title()));
        }
        return String.join("\n", lines);
    }
}
