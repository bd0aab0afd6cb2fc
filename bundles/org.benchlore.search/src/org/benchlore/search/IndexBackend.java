// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.Collection;

import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.eclipse.core.runtime.IProgressMonitor;

/** Where the documents lie: in an index that this process owns, or laid over one that another process owns. */
sealed interface IndexBackend permits OwnedIndex, BorrowedIndex {

    /** Something to do with a searcher. */
    interface Search<T> {
        T with(IndexSearcher searcher) throws IOException;
    }

    /** Searches what is in the index now. */
    <T> T search(Search<T> search) throws IOException;

    /** Leaves out documents that a newer layer replaces. */
    Query current(Query query);

    /** Indexes files again; those that are gone or unreadable are removed. */
    void update(Collection<String> paths, IProgressMonitor monitor) throws IOException;

    /** Throws everything away and indexes all files. */
    void rebuild(IProgressMonitor monitor) throws IOException;

    /** Puts on the disk what was taken in since, where this process owns the index. */
    void commit() throws IOException;

    void close() throws IOException;
}
