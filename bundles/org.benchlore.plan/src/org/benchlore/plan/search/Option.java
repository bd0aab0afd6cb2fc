// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.List;

/**
 * One way of doing a target.
 *
 * @param id its id
 * @param cost cost of its work, in cents
 * @param needs each need is a list of accesses, any one of which must hold
 */
public record Option(String id, long cost, List<List<String>> needs) {

    public Option {
        needs = needs.stream().map(List::copyOf).toList();
    }
}
