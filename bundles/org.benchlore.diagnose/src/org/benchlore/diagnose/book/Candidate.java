// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;

/**
 * What may be the cause: a cause of the book, or a component of which no way of failing is recorded.
 *
 * @param address the cause's, else the component's
 * @param title what it is called
 * @param component where it sits
 * @param cause the cause, if it is one of the book
 */
public record Candidate(Address address, String title, Component component, Optional<Cause> cause) {

    /**
     * Returns what it is called in the arithmetic.
     *
     * @return its address as text
     */
    public String id() {
        return address.toString();
    }
}
