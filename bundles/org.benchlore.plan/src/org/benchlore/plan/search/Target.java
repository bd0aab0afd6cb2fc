// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.List;

/**
 * Something that must be done.
 *
 * @param id its id
 * @param options ways of doing it, any one of which will do
 * @param before targets that must be done before it; those that are not in the plan do not count
 * @param closing closing works it asks for
 */
public record Target(String id, List<Option> options, List<String> before, List<String> closing) {

    public Target {
        options = List.copyOf(options);
        before = List.copyOf(before);
        closing = List.copyOf(closing);
    }
}
