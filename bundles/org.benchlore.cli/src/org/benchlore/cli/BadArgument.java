// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

/** An argument that cannot be used; the message is one plain sentence that says what to do. */
final class BadArgument extends Exception {

    private static final long serialVersionUID = 1L;

    BadArgument(String message) {
        super(message);
    }
}
