// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import org.benchlore.search.Query;
import org.benchlore.search.Results;
import org.benchlore.store.Catalogue;
import org.benchlore.ui.session.Opened;

/**
 * What is asked.
 *
 * @param library where
 * @param query what for
 */
record Question(Opened library, Query query) {

    Results answer() {
        return library.library().search().find(query);
    }

    Question counted() {
        return new Question(library, query.withCounts());
    }

    Catalogue catalogue() {
        return library.library().library().catalogue();
    }

    boolean hasTextOf(Question other) {
        return other != null && library == other.library && query.text().equals(other.query.text());
    }
}
