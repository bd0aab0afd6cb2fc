// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;

import org.benchlore.model.Address;

/**
 * An element that a reference can lead to.
 *
 * @param address where it stands
 * @param title what people call it
 * @param detail what tells it from others of the same title
 * @param numbers part numbers or codes that people know it by, as written
 */
record Choice(Address address, String title, String detail, List<String> numbers) {

    String line() {
        return detail.isEmpty() || detail.equals(title) ? title : title + "  ·  " + detail;
    }

    /** Whether this very element is meant by its title, its id or one of its numbers. */
    boolean isNamed(String typed) {
        return title.equalsIgnoreCase(typed.strip()) || address.id().equals(typed.strip())
                || NumberSpelling.of(typed).isOneOf(numbers);
    }
}
