// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/**
 * Preload and torque for a joint at a share of yield, both calculated.
 *
 * @param joint the joint
 * @param use share of yield with tension and twisting together
 * @param preload preload, a force
 * @param torque tightening torque
 */
public record Tightening(Joint joint, double use, Calculated preload, Calculated torque) {
}
