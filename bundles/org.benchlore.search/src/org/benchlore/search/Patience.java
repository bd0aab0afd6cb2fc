// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import org.apache.lucene.search.IndexSearcher;

/**
 * Nobody waits longer than a moment for what is shown while typing: after that, what was found so far is the answer.
 * Only very long texts in very large libraries come to it.
 */
final class Patience {

    private static final long MOST_NANOS = 100_000_000;
    /** Below this nothing takes long, except on a machine that is busy with something else. */
    private static final int MANY_ELEMENTS = 20_000;

    private Patience() {
    }

    /** Returns a searcher over the same state of the index, for one query from now on. */
    static IndexSearcher over(IndexSearcher shared) {
        if (shared.getIndexReader().maxDoc() < MANY_ELEMENTS) {
            return shared;
        }
        var searcher = new IndexSearcher(shared.getIndexReader());
        long until = System.nanoTime() + MOST_NANOS;
        searcher.setTimeout(() -> System.nanoTime() - until > 0);
        return searcher;
    }
}
