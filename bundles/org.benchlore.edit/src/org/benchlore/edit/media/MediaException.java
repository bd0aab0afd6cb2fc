// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

/** A picture cannot be taken in; the message is one plain sentence that says what to do. */
public final class MediaException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes an exception.
     *
     * @param message what happened and what to do
     */
    public MediaException(String message) {
        super(message);
    }

    /**
     * Makes an exception.
     *
     * @param message what happened and what to do
     * @param cause what brought it about
     */
    public MediaException(String message, Throwable cause) {
        super(message, cause);
    }
}
