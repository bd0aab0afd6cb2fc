// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

/** A pack that cannot be made or taken; the message is one plain sentence that says what to do. */
public final class PackException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes one.
     *
     * @param message one plain sentence
     */
    public PackException(String message) {
        super(message);
    }

    /**
     * Makes one with what brought it about.
     *
     * @param message one plain sentence
     * @param cause what failed
     */
    public PackException(String message, Throwable cause) {
        super(message, cause);
    }
}
