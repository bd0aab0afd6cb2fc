// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import org.benchlore.torque.Calculated;

/**
 * The least and the most torque within a deviation.
 *
 * @param least the least
 * @param most the most
 */
public record Band(Calculated least, Calculated most) {
}
