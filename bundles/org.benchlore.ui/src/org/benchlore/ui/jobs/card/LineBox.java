// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.List;

import org.eclipse.swt.widgets.Control;

/** Something of a line that is filled in. */
interface LineBox {

    /** Shows what the record holds now. */
    void refresh();

    /** Takes what was typed and is not taken yet. */
    void commit();

    /** The controls that the cursor goes through, in order. */
    List<Control> controls();
}
