// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.List;

/**
 * What to check next, in order.
 *
 * @param order the checks with the least expected time; what can hurt somebody stands first
 * @param expected expected minutes until the cause is found, in this order
 * @param likeliestFirst expected minutes when the likeliest is always looked at first
 * @param shortestFirst expected minutes when the quickest is always done first
 */
public record Checks(List<NextCheck> order, double expected, double likeliestFirst, double shortestFirst) {
}
