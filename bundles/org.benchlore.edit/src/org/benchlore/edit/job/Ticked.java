// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import org.benchlore.model.Address;

/** What a line of a job card says when it is ticked. */
public sealed interface Ticked {

    /** Where the procedure or the access stands. */
    Address address();

    /** How many lines of the same round say the same before this one: 0 for nearly all. */
    int before();

    /** A procedure was done. */
    record Done(Address address, int before) implements Ticked {
    }

    /** An access was opened. */
    record Opened(Address address, int before) implements Ticked {
    }

    /** An access was closed. */
    record Closed(Address address, int before) implements Ticked {
    }
}
