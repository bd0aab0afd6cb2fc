// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

/** A library cannot be opened, read or written; the message is one plain sentence that says what to do. */
public final class LibraryException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes an exception.
     *
     * @param message what happened and what to do
     */
    public LibraryException(String message) {
        super(message);
    }

    /**
     * Makes an exception.
     *
     * @param message what happened and what to do
     * @param cause what brought it about
     */
    public LibraryException(String message, Throwable cause) {
        super(message, cause);
    }
}
