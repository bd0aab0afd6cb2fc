// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.product;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;

/** Feeds plain entries through the product: a library with a note for each, its index, its search. */
public final class PlainEntries implements AutoCloseable {

    private final Path scratch;
    private final NoteFiles notes;
    private Optional<Product> product = Optional.empty();

    /**
     * Prepares a library.
     *
     * @param scratch an empty folder
     */
    public PlainEntries(Path scratch) {
        this.scratch = scratch;
        this.notes = new NoteFiles(scratch.resolve("library"));
    }

    /**
     * Writes the library and opens it with its index. The product tells no scores, so that nobody else can order its
     * ties; they come in the order of its files. The files are therefore written in the order in which the ties of the
     * peers are put: by id, the greatest first.
     *
     * @param entries the entries
     * @throws IOException if it cannot be written
     * @throws BenchException if the product does not open it
     */
    public void add(List<TextEntry> entries) throws IOException, BenchException {
        notes.write(entries.stream().sorted(Comparator.comparing(TextEntry::id).reversed()).toList());
        var library = Product.library(scratch.resolve("library"), scratch.resolve("cache"));
        product = Optional.of(Product.of(library, scratch.resolve("index")));
    }

    /**
     * Searches as the search field does.
     *
     * @param text what was typed
     * @param limit most hits
     * @return ids of the entries in the product's order; it tells no scores, so they count down from the limit
     */
    public List<Ranked> search(String text, int limit) {
        var found = new ArrayList<Ranked>();
        for (var id : product.orElseThrow().find(text, limit)) {
            var entry = notes.entry(id);
            if (entry != null) {
                found.add(new Ranked(entry, limit - found.size()));
            }
        }
        return found;
    }

    @Override
    public void close() throws IOException {
        if (product.isPresent()) {
            product.get().close();
        }
    }
}
