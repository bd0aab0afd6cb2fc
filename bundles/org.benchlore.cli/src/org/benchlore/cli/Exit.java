// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

/** Exit codes of the command line. */
final class Exit {

    /** Done. */
    static final int DONE = 0;
    /** Nothing found, or problems found. */
    static final int EMPTY = 1;
    /** A bad argument or an unknown id. */
    static final int BAD_ARGUMENT = 2;
    /** The library cannot be read. */
    static final int UNREADABLE = 3;

    private Exit() {
    }
}
