// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/**
 * What a torque does to a bolt.
 *
 * @param preload preload, N
 * @param shareOfProof preload over proof load, tension alone
 * @param shareOfYield stress from tension and twisting over yield stress
 * @param shareOfTensile preload over breaking load, tension alone
 */
public record Load(double preload, double shareOfProof, double shareOfYield, double shareOfTensile) {
}
