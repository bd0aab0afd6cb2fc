// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;

/** Makes a new element of the library of which only the title is known, and saves it. */
public interface ElementMaker {

    /**
     * Makes an element.
     *
     * @param kind its kind
     * @param title what people call it
     * @return where it stands; empty if that failed, which was said then
     */
    Optional<Address> make(Kind kind, String title);
}
