// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.List;
import java.util.Set;

import org.benchlore.model.Address;

/**
 * A document as ranking causes needs it.
 *
 * @param address where it stands
 * @param title what it is called, with its number
 * @param codes codes it speaks of
 * @param symptoms symptoms it speaks of
 * @param components components it speaks of
 * @param fits whether it is for this unit, as far as its serial number tells
 */
public record CaseDocument(Address address, String title, Set<Address> codes, List<String> symptoms,
        Set<Address> components, boolean fits) {
}
