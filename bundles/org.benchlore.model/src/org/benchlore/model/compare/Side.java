// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

/** Whose version an answer takes. */
public enum Side {
    /** The version that is being merged into. */
    MINE,
    /** The version that came from elsewhere. */
    THEIRS
}
