// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.nio.file.Path;

import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;

/**
 * The demonstration library with an index of its own.
 *
 * @param library the library
 * @param index its index
 */
record Demonstration(Library library, SearchIndex index) implements AutoCloseable {

    static Demonstration open(Path scratch) throws Exception {
        var folder = Path.of(System.getProperty("benchlore.root"), "procedures");
        var library = Library.open(folder, scratch.resolve("cache"), new NullProgressMonitor());
        return new Demonstration(library,
                SearchIndex.open(library, scratch.resolve("index"), true, new NullProgressMonitor()));
    }

    @Override
    public void close() throws Exception {
        index.close();
        library.close();
    }
}
