// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import org.benchlore.ui.edit.form.ClipTarget;

/** What is done to what is selected in an outline. */
interface OutlineEdits extends ClipTarget {

    /** Adds one more of the kind that is selected, behind it. */
    void addNext();

    /** Puts a copy of what is selected behind it. */
    void duplicate();

    /** Moves what is selected among its neighbours. */
    void move(int by);

    /** Moves what is selected a level in (1) or out (-1), where there are levels. */
    default void shift(int by) {
        // Ways and steps have no levels.
    }
}
