// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

/**
 * How a field is called.
 *
 * @param label its label, with its key
 * @param hint shown while it is empty
 */
record Entry(String label, String hint) {

    /**
     * Who follows a field.
     *
     * @param changed is run after what stands in it changed
     * @param relayout is run when it takes more or less room
     */
    record Follow(Runnable changed, Runnable relayout) {
    }

    /** The name that is read out. */
    String name() {
        return label.replace("&", "").replace('\n', ' ');
    }
}
