// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

/** What can be done about an old part while a machine is open. */
public enum Option {
    /** Leave it in. */
    LEAVE,
    /** Renew it now. */
    RENEW,
    /** Test it now and renew it if the test says so. */
    TEST,
    /** Have the part on the shelf and decide when the old one is seen. */
    SHELF
}
