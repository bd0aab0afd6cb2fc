// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import org.benchlore.model.Address;

/**
 * An element that a reference can lead to.
 *
 * @param address where it stands
 * @param title what people call it
 * @param detail what tells it from others of the same title
 */
record Choice(Address address, String title, String detail) {

    String line() {
        return detail.isEmpty() || detail.equals(title) ? title : title + "  ·  " + detail;
    }
}
