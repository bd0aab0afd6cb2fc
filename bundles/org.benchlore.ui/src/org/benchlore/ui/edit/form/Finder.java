// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Optional;

/** Finds what letters can mean, and may make what is not there yet. */
interface Finder {

    /** What fits the letters, the likeliest first. */
    List<Choice> find(String typed);

    /** Says that something of this name can be made, in a line below what was found; empty if it cannot. */
    default Optional<String> offer(String typed) {
        return Optional.empty();
    }

    /** Makes what was offered; empty if that failed, which was said then. */
    default Optional<Choice> make(String typed) {
        return Optional.empty();
    }
}
