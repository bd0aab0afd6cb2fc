// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.product;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.bench.BenchException;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.search.Hit;
import org.benchlore.search.Query;
import org.benchlore.search.SearchIndex;
import org.benchlore.store.Changes;
import org.benchlore.store.Library;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The product as the window uses it: an open library and the index that it owns. */
public final class Product implements AutoCloseable {

    private final Library library;
    private final SearchIndex index;
    private Optional<Changes> last = Optional.empty();

    private Product(Library library, SearchIndex index) {
        this.library = library;
        this.index = index;
        library.onChange(changes -> last = Optional.of(changes));
    }

    /**
     * Opens a library.
     *
     * @param root its folder
     * @param cache where the catalogue is kept
     * @return the library
     * @throws BenchException if it cannot be opened
     */
    public static Library library(Path root, Path cache) throws BenchException {
        try {
            return Library.open(root, cache, new NullProgressMonitor());
        } catch (LibraryException e) {
            throw new BenchException("The product does not open the bench's library: " + e.getMessage(), e);
        }
    }

    /**
     * Opens the index of a library and brings it up to date, building it where there is none.
     *
     * @param library an open library, closed with this
     * @param index folder of the index
     * @return the product
     * @throws IOException if the index cannot be made
     */
    public static Product of(Library library, Path index) throws IOException {
        return new Product(library, SearchIndex.open(library, index, true, new NullProgressMonitor()));
    }

    /**
     * Searches as the search field does while somebody types: rows only.
     *
     * @param text what was typed
     * @param limit most hits
     * @return ids of the notes, best first
     */
    public List<String> find(String text, int limit) {
        return index.find(new Query(text, Map.of(), limit, false)).hits().stream()
                .map(Hit::row).map(row -> row.id()).toList();
    }

    /**
     * Searches as the search field does after a pause: rows with passages and reasons, an exact total and counts.
     *
     * @param text what was typed
     * @param limit most hits
     * @return how many rows there are
     */
    public int look(String text, int limit) {
        var query = new Query(text, Map.of(), limit, true);
        var rows = index.find(query).hits().stream().map(Hit::row).toList();
        return index.passages(query, rows).size();
    }

    /** Gets ready for the first search, as the window does in the background. */
    public void warmUp() {
        index.warmUp();
    }

    /**
     * Writes a note's text anew: into its file and the catalogue, not yet into the index.
     *
     * @param number number of the note
     * @param text its new text
     * @throws BenchException if it is not saved
     */
    public void save(int number, String text) throws BenchException {
        var file = library.file(Kind.NOTE.path(NoteFiles.noteId(number))).orElseThrow();
        var note = EcoreUtil.copy((FieldNote) file.root().orElseThrow());
        note.setText(text);
        try {
            library.save(note, Optional.of(file.hash()));
        } catch (LibraryException e) {
            throw new BenchException("The product does not save a note of the bench: " + e.getMessage(), e);
        }
    }

    /**
     * Takes the last save into the index, so that it is found.
     *
     * @throws IOException if the index cannot be written
     */
    public void index() throws IOException {
        index.update(last.orElseThrow(), new NullProgressMonitor());
    }

    @Override
    public void close() throws IOException {
        try (library) {
            index.close();
        }
    }
}
