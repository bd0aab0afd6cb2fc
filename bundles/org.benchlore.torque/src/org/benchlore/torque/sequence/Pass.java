// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.List;

/**
 * Once over all fasteners.
 *
 * @param percent share of the final torque
 * @param order places in order
 * @param closing whether it is the closing pass, repeated until nothing turns any more
 */
public record Pass(int percent, List<Integer> order, boolean closing) {
}
