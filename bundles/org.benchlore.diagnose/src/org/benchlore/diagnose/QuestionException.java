// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

/** A question that names something the library does not hold; the message says in one line what to do. */
public final class QuestionException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes one.
     *
     * @param message what is wrong and what to do
     */
    public QuestionException(String message) {
        super(message);
    }
}
