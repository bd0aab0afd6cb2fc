// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What was taken from packs: a line a file, with its sum as it was written then. A line that cannot be read is passed over. */
final class Taken {

    static final String PATH = ".benchlore/taken.tsv";

    private final SortedMap<String, Entry> entries = new TreeMap<>();

    record Entry(String sum, LocalDate made) {
    }

    static Taken of(Path root) throws IOException {
        var taken = new Taken();
        var file = root.resolve(PATH);
        if (Files.isRegularFile(file)) {
            Files.readAllLines(file).forEach(taken::line);
        }
        return taken;
    }

    private void line(String line) {
        var words = line.split("\t", -1);
        try {
            if (words.length == 3) {
                entries.put(words[2], new Entry(words[0], LocalDate.parse(words[1])));
            }
        } catch (DateTimeParseException e) {
            System.getLogger(Taken.class.getName()).log(System.Logger.Level.DEBUG, "A line about an earlier pack is passed over", e);
        }
    }

    Optional<Entry> entry(String path) {
        return Optional.ofNullable(entries.get(path));
    }

    void put(String path, String sum, LocalDate made) {
        entries.put(path, new Entry(sum, made));
    }

    byte[] bytes() {
        var text = new StringBuilder();
        entries.forEach((path, entry) -> text.append(entry.sum()).append('\t').append(entry.made()).append('\t').append(path)
                .append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
