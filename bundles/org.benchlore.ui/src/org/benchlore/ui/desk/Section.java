// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.desk;

import org.eclipse.osgi.util.NLS;

/** A part of the desk, in the order in which they stand. */
enum Section {
    /** Notes that nobody has sorted. */
    UNSORTED,
    /** Pairs of notes that likely say the same. */
    ALIKE,
    /** Fixes of which nobody has said whether they held. */
    TO_CONFIRM,
    /** Work that a customer declined and that failed later. */
    DECLINED;

    String title(int lines) {
        return NLS.bind(switch (this) {
            case UNSORTED -> Messages.unsorted;
            case ALIKE -> Messages.alike;
            case TO_CONFIRM -> Messages.toConfirm;
            case DECLINED -> Messages.declined;
        }, lines);
    }
}
