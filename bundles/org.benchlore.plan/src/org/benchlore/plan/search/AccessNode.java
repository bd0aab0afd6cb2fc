// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.List;

/**
 * A state of the machine that can be opened.
 *
 * @param id its id
 * @param strip cost of opening it, in cents
 * @param refit cost of closing it, in cents
 * @param needs each need is a list of accesses, any one of which must hold
 * @param covers accesses it gives for free
 * @param notWith accesses that must not be open at the same time
 * @param closing closing works it asks for
 */
public record AccessNode(String id, long strip, long refit, List<List<String>> needs, List<String> covers,
        List<String> notWith, List<String> closing) {

    public AccessNode {
        needs = needs.stream().map(List::copyOf).toList();
        covers = List.copyOf(covers);
        notWith = List.copyOf(notWith);
        closing = List.copyOf(closing);
    }
}
