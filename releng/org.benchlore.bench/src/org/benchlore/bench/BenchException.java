// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench;

/** The bench cannot do what was asked; the message says in one line what is wrong and what to do. */
public final class BenchException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes an exception.
     *
     * @param message what happened and what to do
     */
    public BenchException(String message) {
        super(message);
    }

    /**
     * Makes an exception.
     *
     * @param message what happened and what to do
     * @param cause what brought it about
     */
    public BenchException(String message, Throwable cause) {
        super(message, cause);
    }
}
