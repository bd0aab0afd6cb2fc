// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.List;

/** There is no plan; the message is one plain sentence that names the elements and says what to do. */
public final class PlanException extends Exception {

    private static final long serialVersionUID = 1L;

    private final List<String> elements;

    /**
     * Makes one.
     *
     * @param message what is wrong and what to do
     * @param elements ids of the elements that stand in the way
     */
    public PlanException(String message, List<String> elements) {
        super(message);
        this.elements = List.copyOf(elements);
    }

    /** Ids of the elements that stand in the way. */
    public List<String> elements() {
        return elements;
    }
}
