// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.product;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.benchlore.bench.TextEntry;
import org.benchlore.model.BookFactory;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.TopElement;
import org.benchlore.store.BookFormat;

/** A library folder with one field note an entry, over several years as in a real one. */
public final class NoteFiles {

    private static final int FIRST_YEAR = 2000;
    private static final int NOTES_A_YEAR = 10_000;

    private final Path root;
    private final BookFormat format = new BookFormat();
    private final Map<String, String> entryByNote = new HashMap<>();

    /**
     * Prepares a library.
     *
     * @param root its folder
     */
    public NoteFiles(Path root) {
        this.root = root;
    }

    /**
     * Writes the shop and a note for each entry.
     *
     * @param entries the entries
     * @throws IOException if the folder cannot be written
     */
    public void write(List<TextEntry> entries) throws IOException {
        var shop = BookFactory.eINSTANCE.createShop();
        shop.setId(Kind.SHOP.word());
        shop.setTitle("Bench");
        put(shop, Kind.SHOP);
        for (int i = 0; i < entries.size(); i++) {
            var note = note(noteId(i), entries.get(i));
            put(note, Kind.NOTE);
            entryByNote.put(note.getId(), entries.get(i).id());
        }
    }

    /** Returns the id of the note that stands for the entry of a number; ids and paths sort as the numbers do. */
    static String noteId(int number) {
        return String.format(Locale.ROOT, "note-%d-bench-n%07d", FIRST_YEAR + number / NOTES_A_YEAR, number);
    }

    /** Returns the id of the entry for which a note stands, or null if there is none. */
    String entry(String noteId) {
        return entryByNote.get(noteId);
    }

    private static FieldNote note(String id, TextEntry entry) {
        var note = BookFactory.eINSTANCE.createFieldNote();
        note.setId(id);
        note.setText(readable(entry.text()));
        if (!entry.title().isEmpty()) {
            note.setTitle(readable(entry.title()));
        }
        return note;
    }

    /** XML cannot hold control characters. */
    private static String readable(String text) {
        return text.replaceAll("[\\p{Cntrl}&&[^\n]]", " ");
    }

    private void put(TopElement element, Kind kind) throws IOException {
        element.setFormatVersion(BookFormat.VERSION);
        element.setInvented(true);
        var path = kind.path(element.getId());
        var file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, format.write(path, element));
    }
}
