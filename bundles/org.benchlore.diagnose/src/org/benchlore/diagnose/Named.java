// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import org.benchlore.model.Address;

/**
 * An element of the library as it is called.
 *
 * @param address where it stands
 * @param title what people call it
 */
public record Named(Address address, String title) {
}
