// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SearcherManager;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;

/** The index on the disk, owned by this process. Commits when it is opened, when it is told to and when it is
 * closed, not on a save. */
final class OwnedIndex implements IndexBackend {

    private final Library library;
    private final Documents documents;
    private final IndexFolder folder;
    private final IndexWriter writer;
    private final SearcherManager searchers;
    private boolean stamped;

    private OwnedIndex(Library library, IndexFolder folder, IndexFolder.Opened opened) throws IOException {
        this.library = library;
        this.documents = new Documents(library);
        this.folder = folder;
        this.writer = opened.writer();
        this.stamped = opened.state() == IndexFolder.State.READY;
        this.searchers = new SearcherManager(writer, null);
    }

    /** Takes over an index that was opened for writing and brings it up to date with the library's files. */
    static OwnedIndex upToDate(Library library, IndexFolder folder, IndexFolder.Opened opened,
            IProgressMonitor monitor) throws IOException {
        try {
            var index = new OwnedIndex(library, folder, opened);
            index.catchUp(monitor);
            return index;
        } catch (IOException | RuntimeException e) {
            opened.writer().rollback();
            throw e;
        }
    }

    private void catchUp(IProgressMonitor monitor) throws IOException {
        try (var reader = DirectoryReader.open(writer)) {
            var difference = Layers.between(reader, library.catalogue());
            var paths = new TreeSet<>(difference.stale());
            paths.addAll(difference.gone());
            update(paths, monitor);
        }
        commit();
    }

    @Override
    public <T> T search(Search<T> search) throws IOException {
        var searcher = searchers.acquire();
        try {
            return search.with(searcher);
        } finally {
            searchers.release(searcher);
        }
    }

    @Override
    public Query current(Query query) {
        return query;
    }

    @Override
    public void update(Collection<String> paths, IProgressMonitor monitor) throws IOException {
        var progress = SubMonitor.convert(monitor, paths.size());
        int number = 0;
        for (var path : paths) {
            if (progress.isCanceled()) {
                throw new OperationCanceledException();
            }
            progress.subTask(++number + " of " + paths.size());
            var entry = library.catalogue().entry(path);
            Layers.replace(writer, path, entry.map(documents::of).orElse(List.of()));
            progress.worked(1);
        }
        searchers.maybeRefreshBlocking();
    }

    @Override
    public void rebuild(IProgressMonitor monitor) throws IOException {
        writer.deleteAll();
        update(library.catalogue().entries().stream().map(Entry::path).toList(), monitor);
        commit();
    }

    @Override
    public synchronized void commit() throws IOException {
        if (writer.hasUncommittedChanges() || !stamped) {
            writer.setLiveCommitData(folder.stamp().entrySet());
            writer.commit();
            stamped = true;
        }
    }

    @Override
    public void close() throws IOException {
        try {
            commit();
        } finally {
            searchers.close();
            writer.close();
            writer.getDirectory().close();
        }
    }
}
