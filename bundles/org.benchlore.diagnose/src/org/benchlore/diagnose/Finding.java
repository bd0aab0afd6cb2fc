// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.Optional;

import org.benchlore.model.Address;

/**
 * A symptom or a code of the question.
 *
 * @param id as it is called within one answer
 * @param label as it is read, such as '4C17: Teach-in stopped'
 * @param text as it was given
 * @param code the library's fault code, empty for a symptom and for a code it does not hold
 * @param isCode whether it was given as a code
 */
public record Finding(String id, String label, String text, Optional<Address> code, boolean isCode) {
}
