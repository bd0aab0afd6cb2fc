// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;
import java.util.Optional;

/**
 * What somebody at the bench asks.
 *
 * @param about id of a machine or of a unit
 * @param symptoms what was noticed, in anybody's words
 * @param codes fault codes as shown
 * @param after id of the procedure that was done and did not cure
 * @param replies what was answered to checks so far, in order
 */
public record Question(String about, List<String> symptoms, List<String> codes, Optional<String> after,
        List<Reply> replies) {

    /** Copies the lists. */
    public Question {
        symptoms = List.copyOf(symptoms);
        codes = List.copyOf(codes);
        replies = List.copyOf(replies);
    }

    /**
     * The answer to a check.
     *
     * @param check id of a step, of a procedure or of a cause
     * @param result id or words of an outcome; of a cause 'yes' or 'no'
     */
    public record Reply(String check, String result) {
    }

    /**
     * Returns the same question with one more answer.
     *
     * @param check id of a check
     * @param result what was found
     * @return the question
     */
    public Question with(String check, String result) {
        var more = new java.util.ArrayList<>(replies);
        more.add(new Reply(check, result));
        return new Question(about, symptoms, codes, after, more);
    }
}
