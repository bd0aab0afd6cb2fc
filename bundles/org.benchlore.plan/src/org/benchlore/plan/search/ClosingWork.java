// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.List;

/**
 * Something done once after closing, however many ask for it.
 *
 * @param id its id
 * @param cost its cost, in cents
 * @param closing closing works that it asks for itself
 */
public record ClosingWork(String id, long cost, List<String> closing) {

    public ClosingWork {
        closing = List.copyOf(closing);
    }
}
