// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.util.Optional;

import org.benchlore.model.Address;

/**
 * How a fastening was tightened.
 *
 * @param torque torque set, as typed; empty if it is not known yet
 * @param angle angle turned after it, as typed; may be empty
 * @param tool with which wrench
 * @param holding which of the shop's own wrenches it was
 * @param by who tightened
 */
public record Turning(String torque, String angle, Optional<Address> tool, Optional<Address> holding,
        Optional<Address> by) {
}
