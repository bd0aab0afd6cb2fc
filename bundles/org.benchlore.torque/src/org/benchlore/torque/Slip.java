// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/**
 * A reading of the same digits that would be usual: a guess to look up, never a figure to tighten to.
 *
 * @param words what may have happened, such as {@code the unit may be lbf·ft}
 * @param factor the torque meant over the torque stated
 * @param shareOfProof share of the proof load it would give
 */
public record Slip(String words, double factor, double shareOfProof) {
}
