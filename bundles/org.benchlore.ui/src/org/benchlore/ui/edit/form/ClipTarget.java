// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Clip;

/** A list whose elements are copied, cut and pasted. */
public interface ClipTarget {

    /**
     * Copies what is selected.
     *
     * @return the copy, or empty if nothing is selected that can be copied
     */
    Optional<Clip> copy();

    /** Removes what is selected. */
    void remove();

    /**
     * Pastes an element.
     *
     * @param clip a copied element
     * @throws IllegalArgumentException with a plain sentence if it does not belong here
     */
    void paste(Clip clip);

    /**
     * Makes elements of lines of text that were copied in any program.
     *
     * @param lines lines that are not blank
     * @throws IllegalArgumentException with a plain sentence if lines of text make no elements here
     */
    default void paste(List<String> lines) {
        throw new IllegalArgumentException(Messages.noLines);
    }
}
