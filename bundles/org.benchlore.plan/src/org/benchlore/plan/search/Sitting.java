// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.List;
import java.util.SortedMap;

/**
 * A part of a plan in which the same accesses are open.
 *
 * @param kept accesses that stay open from before, in an order in which they can be opened
 * @param opened accesses opened for it, in an order in which they can be opened after those
 * @param done chosen way of each target done in it
 */
public record Sitting(List<String> kept, List<String> opened, SortedMap<String, String> done) {
}
