// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

/** What a library is opened for. */
public enum Use {
    /** To look something up and close it again: takes no lock and leaves the index to others. */
    LOOK_UP,
    /** To work in it: holds the right to write, if it is free, and owns the index. */
    WORK
}
