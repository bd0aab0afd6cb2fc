// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.TopElement;
import org.benchlore.store.Library;

/**
 * What a page is written from.
 *
 * @param library the library
 * @param own the element of the page
 * @param links makes links on this page
 * @param prices writes prices
 */
record Scope(Library library, TopElement own, Links links, Prices prices) {

    static Scope of(Library library, TopElement own) {
        return new Scope(library, own, new Links(library, own), new Prices(library));
    }

    /** Returns the path of the page's file, empty where an element has no proper place yet. */
    Optional<String> path() {
        return links.address(own).map(Address::path);
    }
}
