// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

/**
 * A problem that somebody decided to live with.
 *
 * @param problem the problem
 * @param reason why
 */
public record Silenced(Problem problem, String reason) {
}
