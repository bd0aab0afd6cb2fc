// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

/**
 * A document that was found.
 *
 * @param id its id in the set
 * @param score greater is better; only the order matters
 */
public record Ranked(String id, double score) {
}
