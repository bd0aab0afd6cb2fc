// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;

/** What elements are called. */
final class Titles {

    private Titles() {
    }

    static String of(TopElement element) {
        return element.getTitle() == null || element.getTitle().isBlank() ? element.getId() : element.getTitle();
    }

    static String of(Titled element) {
        return element.getTitle() == null || element.getTitle().isBlank() ? element.getId() : element.getTitle();
    }
}
