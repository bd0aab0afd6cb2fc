// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.util.List;

/**
 * How a version of an element differs from another one.
 *
 * @param before what the one is called
 * @param after what the other one is called
 * @param sentences one for each difference, in the order of the other one; empty if they are alike
 */
public record Comparison(String before, String after, List<String> sentences) {
}
