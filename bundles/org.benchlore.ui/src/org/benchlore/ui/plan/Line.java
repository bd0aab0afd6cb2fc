// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

/**
 * Something that can be ticked or taken out.
 *
 * @param id of an access or a procedure
 * @param title what people call it
 */
public record Line(String id, String title) {
}
